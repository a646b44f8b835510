package org.coachskin.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The text of a file that a person named, or words for why there is none. */
final class TextFile {

    /** A panel file is a page or two; this is far beyond. */
    private static final int LARGEST = 1 << 20;

    private TextFile() {}

    /**
     * Returns the text, without a byte-order mark.
     *
     * @throws org.coachskin.InputException when there is none to be had
     */
    static String read(Path path, Findings findings) {
        String text = "";
        try {
            if (Files.isDirectory(path)) {
                findings.addWhole("This is a folder.", "Name the panel file in it.");
            } else {
                text = decoded(path, findings);
            }
        } catch (IOException e) {
            note(e, path, findings);
        }
        findings.stopIfAny();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String decoded(Path path, Findings findings) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(LARGEST + 1);
        }
        if (bytes.length > LARGEST) {
            findings.addWhole(
                    "The file is larger than a megabyte: no panel file is.", "Check the name.");
            return "";
        }
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    /** Notes why a file could not be read. */
    static void note(IOException e, Path path, Findings findings) {
        if (e instanceof NoSuchFileException) {
            findings.addWhole(
                    "There is no such file.",
                    "Check the name, or write a new one with   coachskin new lid "
                            + path.getFileName());
        } else if (e instanceof AccessDeniedException) {
            findings.addWhole("You may not read this file.", "Ask for permission, or copy it.");
        } else if (e instanceof CharacterCodingException) {
            findings.addWhole("The file is not UTF-8 text.", "Save it as UTF-8 in your editor.");
        } else {
            findings.addWhole(
                    "The file cannot be read: " + e.getMessage() + ".", "Try again, or copy it.");
        }
    }
}
