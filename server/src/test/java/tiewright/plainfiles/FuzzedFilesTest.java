package tiewright.plainfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;
import tiewright.event.Actor;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Role;
import tiewright.wording.Words;

/**
 * Folders as no program writes them: the invented event with cells, lines, columns and bytes changed. Each is read, or every fault of it is
 * told in words; what has no fault can be brought in or is refused in words. {@code -Dfuzz=100000} reads as many.
 */
class FuzzedFilesTest {
    private static final int MANY = Integer.getInteger("fuzz", 5_000);
    /** Of earlier results: what comes below is of the same kind. */
    private static final int LINES = 30;

    private static final List<String> CELLS = List.of(
            "",
            "-1",
            "0",
            "1",
            "99999999999999999999",
            "1e9",
            "NaN",
            "2026-02-30",
            "25:61",
            "+999999999-12-31",
            "<b>",
            "\u202eabc",
            "\uD83D\uDE00",
            "\u0000",
            "A1",
            "home",
            "yes",
            "21",
            "\u0663",
            "UTC",
            "=1+1",
            "'=1",
            "\"",
            "\"a\nb\"",
            "x".repeat(3_000),
            ";",
            "win",
            "15/11/7",
            "N1",
            "p1/p2",
            "1/0/0",
            "A-1",
            "winner-SF1");

    @TempDir
    Path folder;

    private final Seed seed = Seed.fresh();
    private final Random random = seed.random();
    private final Words english = Words.ofCodes(ZoneOffset.UTC);

    private static Map<String, byte[]> whole() throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(Path.of("..", "demo-data", "event"))) {
            for (Path file : all.toList()) {
                try (Stream<String> lines = Files.lines(file)) {
                    files.put(
                            file.getFileName().toString(),
                            (lines.limit(file.endsWith("past-results.csv") ? LINES : Long.MAX_VALUE)
                                                    .collect(Collectors.joining("\n"))
                                            + "\n")
                                    .getBytes(StandardCharsets.UTF_8));
                }
            }
        }
        return files;
    }

    @Test
    void every_folder_is_read_or_its_faults_are_told() throws IOException {
        Map<String, byte[]> whole = whole();
        List<String> names = List.copyOf(whole.keySet());
        for (Map.Entry<String, byte[]> file : whole.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
        int read = 0;
        for (int i = 0; i < MANY; i++) {
            String name = names.get(random.nextInt(names.size()));
            byte[] changed = changed(whole.get(name), whole.get(names.get(random.nextInt(names.size()))));
            Files.write(folder.resolve(name), changed);
            try {
                read += look() ? 1 : 0;
            } catch (RuntimeException | LinkageError failure) {
                throw new AssertionError(
                        seed + ", case " + i + ", " + name + ":\n" + new String(changed, StandardCharsets.UTF_8),
                        failure);
            }
            Files.write(folder.resolve(name), whole.get(name));
        }
        assertThat(read).as("folders without a fault, %s", seed).isBetween(1, MANY - 1);
    }

    /** Whether it has no fault. */
    private boolean look() {
        EventFolder found = EventFolder.read(folder);
        found.faults().forEach(fault -> assertThat(fault.why(english)).isNotBlank());
        if (!found.faults().isEmpty()) {
            return false;
        }
        Decision.Outcome outcome = ImportEvent.of(found)
                .decide(
                        Event.of(List.of()),
                        new Decision.Given(Instant.EPOCH, Actor.of(Role.ORGANISER, "test"), Directory.EMPTY, Map.of()));
        if (outcome instanceof Decision.Refused refused) {
            refused.reasons()
                    .forEach(reason -> assertThat(english.sentence(reason)).isNotBlank());
        } else {
            found.event();
        }
        return true;
    }

    private byte[] changed(byte[] whole, byte[] other) {
        byte[] bytes = whole;
        for (int i = 0; i <= random.nextInt(3); i++) {
            bytes = switch (random.nextInt(8)) {
                case 0 -> flipped(bytes);
                case 1 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
                case 2 -> joined(bytes, other);
                default -> lines(new String(bytes, StandardCharsets.UTF_8));
            };
        }
        return bytes;
    }

    private byte[] flipped(byte[] bytes) {
        byte[] changed = bytes.clone();
        for (int i = 0; i <= random.nextInt(4) && changed.length > 0; i++) {
            changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
        }
        return changed;
    }

    private static byte[] joined(byte[] one, byte[] other) {
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        both.writeBytes(one);
        both.writeBytes(other);
        return both.toByteArray();
    }

    private byte[] lines(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(6)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(random.nextInt(lines.size() + 1), lines.get(at));
            case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
            default -> lines.set(at, cells(lines.get(at)));
        }
        return String.join(random.nextInt(20) == 0 ? "\r\n" : "\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    private String cells(String line) {
        List<String> cells = new ArrayList<>(List.of(line.split(",", -1)));
        int at = random.nextInt(cells.size());
        switch (random.nextInt(5)) {
            case 0 -> cells.remove(at);
            case 1 -> cells.add(at, cells.get(random.nextInt(cells.size())));
            default -> cells.set(at, CELLS.get(random.nextInt(CELLS.size())));
        }
        return String.join(",", cells);
    }
}
