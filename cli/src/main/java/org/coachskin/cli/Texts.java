package org.coachskin.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that are kept as files beside the classes. */
final class Texts {

    private Texts() {}

    /** Returns the text of a file that is known to be there. */
    static String read(String name) {
        try (InputStream text = Texts.class.getResourceAsStream(name)) {
            if (text == null) {
                throw new IllegalStateException("no text " + name);
            }
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
