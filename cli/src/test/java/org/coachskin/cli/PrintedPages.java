package org.coachskin.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** On which pages of a PDF something is filled with a colour that nothing else has. */
final class PrintedPages {

    private static final Pattern STREAM = Pattern.compile("stream\r?\n");

    private static final Pattern PAGE =
            Pattern.compile("<</Type /Page\\s.*?endobj", Pattern.DOTALL);

    private static final Pattern CONTENTS = Pattern.compile("/Contents (\\d+) 0 R");

    private static final Pattern FILL = Pattern.compile("([0-9.]+) ([0-9.]+) ([0-9.]+) rg");

    /** What is painted on each page. */
    private final List<String> pages = new ArrayList<>();

    PrintedPages(Path pdf) throws IOException {
        byte[] bytes = Files.readAllBytes(pdf);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        Matcher page = PAGE.matcher(text);
        List<String> contents = new ArrayList<>();
        while (page.find()) {
            Matcher of = CONTENTS.matcher(page.group());
            if (of.find()) {
                contents.add(of.group(1));
            }
        }
        for (String number : contents) {
            int at = text.indexOf("\n" + number + " 0 obj");
            Matcher stream = STREAM.matcher(text);
            if (at < 0 || !stream.find(at)) {
                throw new IOException("no contents " + number);
            }
            pages.add(inflated(bytes, stream.end(), text.indexOf("endstream", stream.end())));
        }
    }

    private static String inflated(byte[] bytes, int from, int to) throws IOException {
        Inflater inflater = new Inflater();
        inflater.setInput(bytes, from, to - from);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] part = new byte[8192];
        try {
            for (int n = inflater.inflate(part); n > 0; n = inflater.inflate(part)) {
                out.write(part, 0, n);
            }
        } catch (DataFormatException e) {
            throw new IOException(e);
        } finally {
            inflater.end();
        }
        return out.toString(StandardCharsets.ISO_8859_1);
    }

    int count() {
        return pages.size();
    }

    /** Returns the pages on which a colour is filled, from 0. */
    List<Integer> with(int red, int green, int blue) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Matcher fill = FILL.matcher(pages.get(i));
            while (fill.find()) {
                if (is(fill.group(1), red) && is(fill.group(2), green) && is(fill.group(3), blue)) {
                    found.add(i);
                    break;
                }
            }
        }
        return found;
    }

    private static boolean is(String share, int value) {
        return Math.abs(255 * Double.parseDouble(share) - value) < 0.1;
    }
}
