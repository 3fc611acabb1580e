package tiewright;

import java.io.File;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;

/** With what a test starts a process of its own. */
public final class TestClassPath {
    private TestClassPath() {}

    /** Of these tests, whichever way they are run. */
    public static String text() {
        return TestClassPath.class.getClassLoader() instanceof URLClassLoader loader
                ? Arrays.stream(loader.getURLs())
                        .map(TestClassPath::path)
                        .collect(Collectors.joining(File.pathSeparator))
                : System.getProperty("java.class.path");
    }

    private static String path(URL url) {
        try {
            return Path.of(url.toURI()).toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
