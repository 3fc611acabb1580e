package tiewright.saturday;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Plays days in a program that is compiled with a fault in it; libraries and everything else are the same. */
final class PutBack {
    /** With the library of templates, which makes ours. */
    private static final List<String> OURS = List.of("tiewright.", "gg.jte.");

    private static final String CLASS_PATH =
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));

    private final Fault fault;

    PutBack(Fault fault) {
        this.fault = fault;
    }

    /** What {@link Played} says of these days; see there. */
    String played(long first, int days) {
        try {
            Path classes = Files.createTempDirectory("tiewright-fault");
            compile(classes);
            Thread here = Thread.currentThread();
            ClassLoader usual = here.getContextClassLoader();
            try (URLClassLoader loader = new Faulty(urls(classes))) {
                here.setContextClassLoader(loader);
                return said(loader, new long[] {first, days, fault.promise()});
            } finally {
                here.setContextClassLoader(usual);
                delete(classes);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @SuppressWarnings("unchecked") // the class is ours, by another loader
    private static String said(ClassLoader loader, long[] asked) {
        try {
            var constructor = loader.loadClass(Played.class.getName()).getDeclaredConstructor();
            constructor.setAccessible(true);
            return ((Function<long[], String>) constructor.newInstance()).apply(asked);
        } catch (ReflectiveOperationException bug) {
            throw new IllegalStateException(bug);
        }
    }

    private void compile(Path classes) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter said = new StringWriter();
        List<String> options =
                List.of("-d", classes.toString(), "-cp", CLASS_PATH, "-parameters", "-proc:none", "-nowarn");
        if (!compiler.getTask(said, null, null, options, null, List.of(new Source()))
                .call()) {
            throw new IllegalStateException(fault + " does not compile: " + said);
        }
    }

    private static URL[] urls(Path first) throws MalformedURLException {
        List<URL> urls = new ArrayList<>(List.of(first.toUri().toURL()));
        for (String entry : Arrays.asList(CLASS_PATH.split(java.io.File.pathSeparator))) {
            urls.add(Path.of(entry).toUri().toURL());
        }
        return urls.toArray(URL[]::new);
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            files.sorted(java.util.Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        }
    }

    private final class Source extends SimpleJavaFileObject {
        Source() {
            super(URI.create("string:///" + fault.holder().replace('.', '/') + Kind.SOURCE.extension), Kind.SOURCE);
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return fault.source();
        }
    }

    /** Loads all classes of the program anew, the faulty one first, so that each meets the others of its kind. */
    private static final class Faulty extends URLClassLoader {
        Faulty(URL[] urls) {
            super(urls, PutBack.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (OURS.stream().noneMatch(name::startsWith)) {
                return super.loadClass(name, resolve);
            }
            synchronized (getClassLoadingLock(name)) {
                Class<?> loaded = findLoadedClass(name);
                return loaded == null ? findClass(name) : loaded;
            }
        }
    }
}
