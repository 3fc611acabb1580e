package tiewright;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.text.NumberFormat;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** The net that {@code HouseTest} casts over the rooms that compute catches what it is made for, and lets the rest through. */
class OuterWorldTest {
    private static final List<Object> ASKS = List.of(
            new Object() {
                Instant asks = Instant.now();
            },
            new Object() {
                Supplier<LocalTime> asks = LocalTime::now;
            },
            new Object() {
                Instant asks = Clock.systemUTC().instant();
            },
            new Object() {
                long asks = System.nanoTime();
            },
            new Object() {
                long asks = System.currentTimeMillis();
            },
            new Object() {
                Supplier<Long> asks = System::nanoTime;
            },
            new Object() {
                Object asks = System.out;
            },
            new Object() {
                Object asks = System.getenv("TZ");
            },
            new Object() {
                Thread asks = Thread.currentThread();
            },
            new Object() {
                Object asks = Object.class.getResource("rules.txt");
            },
            new Object() {
                Random asks = new Random();
            },
            new Object() {
                SplittableRandom asks = new SplittableRandom();
            },
            new Object() {
                double asks = Math.random();
            },
            new Object() {
                int asks = ThreadLocalRandom.current().nextInt();
            },
            new Object() {
                Random asks = new SecureRandom(new byte[1]);
            },
            new Object() {
                UUID asks = UUID.randomUUID();
            },
            new Object() {
                Runnable asks = () -> Collections.shuffle(new ArrayList<>(List.of(1)));
            },
            new Object() {
                Locale asks = Locale.getDefault();
            },
            new Object() {
                ZoneId asks = ZoneId.systemDefault();
            },
            new Object() {
                Charset asks = Charset.defaultCharset();
            },
            new Object() {
                String asks = "I".toLowerCase();
            },
            new Object() {
                byte[] asks = "é".getBytes();
            },
            new Object() {
                String asks = new String(new byte[1]);
            },
            new Object() {
                String asks = String.format("%d", 1);
            },
            new Object() {
                String asks = "%d".formatted(1);
            },
            new Object() {
                NumberFormat asks = NumberFormat.getInstance();
            },
            new Object() {
                DateTimeFormatter asks = DateTimeFormatter.ofPattern("MMM");
            },
            new Object() {
                Object asks = java.nio.file.Path.of("rules.txt");
            },
            new Object() {
                Object asks = new java.io.ByteArrayOutputStream();
            });

    private static final List<Object> DOES_NOT = List.of(
            new Object() {
                Instant given = Instant.EPOCH;
            },
            new Object() {
                long seeded = new Random(7).nextLong() + new SplittableRandom(7).nextLong();
            },
            new Object() {
                String rooted = "I".toLowerCase(Locale.ROOT) + String.format(Locale.ROOT, "%d", 1);
            },
            new Object() {
                String lettered = new String("é".getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
            },
            new Object() {
                Runnable copies = () -> System.arraycopy(new int[1], 0, new int[1], 0, 1);
            },
            new Object() {
                Runnable seeded = () -> Collections.shuffle(new ArrayList<>(List.of(1)), new Random(7));
            });

    @Test
    void catches_every_one_that_asks_for_what_changes() {
        ASKS.forEach(one -> assertThat(found(one))
                .as(one.getClass().getDeclaredFields()[0].toString())
                .isNotEmpty());
    }

    @Test
    void lets_through_what_comes_in_as_an_argument() {
        DOES_NOT.forEach(
                one -> assertThat(found(one)).as(one.getClass().getName()).isEmpty());
    }

    private static Iterable<String> found(Object one) {
        return OuterWorld.of(new ClassFileImporter().importClass(one.getClass()));
    }
}
