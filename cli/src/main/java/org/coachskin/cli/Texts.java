package org.coachskin.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that are kept as files beside the classes. */
final class Texts {

    private Texts() {}

    /** Returns the name of a file as a command takes it: in quotes where it holds a space. */
    static String asArgument(String file) {
        return file.indexOf(' ') < 0 ? file : '"' + file + '"';
    }

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
