package tiewright.http;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.stream.Stream;
import tiewright.wording.Language;
import tiewright.wording.Words;

/**
 * A language made of the English one by putting every sentence in brackets, dropped into a folder of languages as any other
 * would be: what stands on a page without brackets is in no bundle. The folder is this process's alone, for tests run in
 * several.
 */
final class PseudoLanguage implements AutoCloseable {
    /** ISO 639-1 for Volapük, which nobody ships. */
    static final String TAG = "vo";

    static final char OPENS = '⟦';
    static final char CLOSES = '⟧';

    private final Path folder;

    private PseudoLanguage(Path folder) {
        this.folder = folder;
    }

    static PseudoLanguage made() {
        try {
            Properties all = english();
            all.replaceAll((key, text) ->
                    ((String) key).startsWith("language.plural.") ? text : OPENS + (String) text + CLOSES);
            PseudoLanguage made = new PseudoLanguage(Files.createTempDirectory("languages"));
            try (Writer out = Files.newBufferedWriter(made.file())) {
                all.store(out, "made by a test");
            }
            System.setProperty(Language.FOLDER_PROPERTY, made.folder.toString());
            return made;
        } catch (IOException | URISyntaxException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static Properties english() throws IOException, URISyntaxException {
        Properties all = new Properties();
        Path rooms = Path.of(Words.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI())
                .resolve("tiewright/wording");
        try (Stream<Path> files = Files.list(rooms)) {
            for (Path room : files.filter(file -> file.toString().endsWith(".properties"))
                    .toList()) {
                try (Reader text = Files.newBufferedReader(room)) {
                    all.load(text);
                }
            }
        }
        return all;
    }

    private Path file() {
        return folder.resolve(TAG + ".properties");
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
        System.clearProperty(Language.FOLDER_PROPERTY);
        try {
            Files.deleteIfExists(file());
            Files.deleteIfExists(folder);
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
