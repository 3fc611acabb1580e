package tiewright.http;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Properties;
import java.util.stream.Stream;
import tiewright.wording.Words;

/**
 * A language made of the English one by putting every sentence in brackets, dropped into the folder of the languages as any
 * other would be: what stands on a page without brackets is in no bundle.
 */
final class PseudoLanguage implements AutoCloseable {
    /** ISO 639-1 for Volapük, which nobody ships. */
    static final String TAG = "vo";

    static final char OPENS = '⟦';
    static final char CLOSES = '⟧';

    /** Held by one process at a time: the file lies where all of them look for languages. */
    private static final Path ALONE = Path.of("target", TAG + ".lock");

    private final Path file;
    private final FileChannel alone;

    private PseudoLanguage(Path file, FileChannel alone) {
        this.file = file;
        this.alone = alone;
    }

    static PseudoLanguage made() {
        try {
            Files.createDirectories(ALONE.getParent());
            FileChannel alone = FileChannel.open(ALONE, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            alone.lock();
            Properties all = new Properties();
            try (Stream<Path> rooms = Files.list(folder(Words.class))) {
                for (Path room : rooms.filter(file -> file.toString().endsWith(".properties"))
                        .toList()) {
                    try (Reader text = Files.newBufferedReader(room)) {
                        all.load(text);
                    }
                }
            }
            all.replaceAll((key, text) ->
                    ((String) key).startsWith("language.plural.") ? text : OPENS + (String) text + CLOSES);
            Path file = folder(PseudoLanguage.class).resolve(TAG + ".properties");
            Files.createDirectories(file.getParent());
            try (Writer out = Files.newBufferedWriter(file)) {
                all.store(out, "made by a test");
            }
            return new PseudoLanguage(file, alone);
        } catch (IOException | java.net.URISyntaxException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static Path folder(Class<?> beside) throws java.net.URISyntaxException {
        return Path.of(beside.getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI())
                .resolve("tiewright/wording");
    }

    /** The text without what stands in brackets. */
    static String unbracketed(String text) {
        StringBuilder rest = new StringBuilder();
        int depth = 0;
        for (char c : text.toCharArray()) {
            depth += c == OPENS ? 1 : 0;
            if (depth == 0) {
                rest.append(c);
            }
            depth -= c == CLOSES && depth > 0 ? 1 : 0;
        }
        return rest.toString();
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(file);
            alone.close();
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
