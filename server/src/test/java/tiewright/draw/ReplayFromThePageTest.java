package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.Seeding;
import tiewright.event.ClubId;
import tiewright.event.SlotSource;

/** A stranger draws again with nothing but docs/draw.md: written from the page, with its table of lines, and none of the room's code. */
class ReplayFromThePageTest {
    private static final Path PAGE = Path.of("..", "docs", "draw.md");
    private static final String BYE = "bye";
    private static final String KEPT = "kept";

    /** Numbers from the words. */
    private static final class Numbers {
        private final String words;
        private final String purpose;
        private int i;

        Numbers(String words, String purpose) {
            this.words = words;
            this.purpose = purpose;
        }

        BigInteger oneOf(BigInteger n) {
            BigInteger all = BigInteger.TWO.pow(256);
            BigInteger fair = all.subtract(all.mod(n));
            BigInteger number = next();
            while (number.compareTo(fair) >= 0) {
                number = next();
            }
            return number.mod(n);
        }

        private BigInteger next() {
            try {
                byte[] text = (words + "\n" + purpose + "\n" + i++).getBytes(StandardCharsets.UTF_8);
                return new BigInteger(1, MessageDigest.getInstance("SHA-256").digest(text));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    @Test
    void lots_can_be_drawn_again_from_the_page_in_every_script() {
        for (int round = 0; round < 200; round++) {
            Random random = Seed.random(round);
            List<String> codes = new ArrayList<>(List.of("a", "B", "Ž", "я", "ﾌ", "𝄞", "AB"));
            java.util.Collections.shuffle(codes, random);
            codes = codes.subList(0, 2 + random.nextInt(5));
            String words = "words " + random.nextInt();
            assertThat(LotOrder.of("P", codes.stream().map(ClubId::of).toList(), words + " "))
                    .as(Seed.rerun(round))
                    .extracting(ClubId::code)
                    .containsExactlyElementsOf(lot("P", codes, words));
        }
    }

    private static List<String> lot(String pool, List<String> codes, String words) {
        List<String> left = new ArrayList<>(codes);
        left.sort((one, other) ->
                Arrays.compareUnsigned(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8)));
        Numbers numbers = new Numbers(words, "lot " + pool + " " + String.join(",", left));
        List<String> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(numbers.oneOf(BigInteger.valueOf(left.size())).intValue()));
        }
        return order;
    }

    /** Winners only, where the page used to say less than the code does; and the others as far as every bracket can be listed. */
    @ParameterizedTest
    @CsvSource({
        "2,1", "3,1", "4,1", "5,1", "6,1", "7,1", "8,1", "9,1", "11,1", "1,2", "1,3", "1,4", "2,2", "2,3", "2,4", "3,2",
        "4,2", "5,2"
    })
    void a_knockout_can_be_drawn_again_from_the_page(int pools, int fromEach) throws IOException {
        for (Seeding seeding : Seeding.values()) {
            for (int i = 0; i < 4; i++) {
                List<String> names = IntStream.range(0, pools)
                        .mapToObj(p -> "" + (char) ('A' + p))
                        .toList();
                KnockoutPlan plan = ((KnockoutResult.Planned) KnockoutDraw.draw(
                                new KnockoutDraw.Shape(names, fromEach, seeding, false), "blue kites " + i))
                        .plan();
                Stranger stranger = new Stranger(names, fromEach, seeding);
                assertThat(stranger.draw("blue kites " + i))
                        .as(seeding + " " + i)
                        .isEqualTo(plan.lines().stream()
                                .map(line -> line.map(SlotSource::code).orElse(BYE))
                                .toList());
            }
        }
    }

    /** Reads the table, then the rules below it. */
    private static final class Stranger {
        /** To be placed: a club, or a bye beyond the seeds; {@code number} is that of its seed's place, 0 for all others. */
        private record Next(String name, int number, boolean withBye, boolean mayMeetBye) {}

        private final List<List<Integer>> seedLines = new ArrayList<>();
        private final List<Next> order = new ArrayList<>();
        private final int lines;
        private final int fromEach;
        private final List<String> pools;
        private final String[] at;
        private int fewest = Integer.MAX_VALUE;
        private long brackets;

        Stranger(List<String> pools, int fromEach, Seeding seeding) throws IOException {
            this.pools = pools;
            this.fromEach = fromEach;
            int clubs = pools.size() * fromEach;
            this.lines = clubs <= 2 ? 2 : clubs <= 4 ? 4 : clubs <= 8 ? 8 : clubs <= 16 ? 16 : 32;
            this.at = new String[lines + 1];
            String row = Files.readAllLines(PAGE).stream()
                    .filter(line -> line.startsWith("| " + lines + " | " + seeding.code() + " |"))
                    .findFirst()
                    .orElseThrow();
            Arrays.stream(row.split("\\|")).skip(3).forEach(cell -> seedLines.add(numbers(cell)));
            int places = Math.min(fromEach, lines / 2 / pools.size());
            int seeds = pools.size() > lines / 2 ? lines / 2 : places * pools.size();
            int byes = lines - clubs;
            for (int club = 0; club < clubs; club++) {
                for (int bye = seeds + 1; club == seeds && bye <= byes; bye++) {
                    order.add(new Next(BYE, bye, false, false));
                }
                int place = club / pools.size() + 1;
                String name = pools.get(club % pools.size()) + "-" + place;
                boolean seed = club < seeds;
                order.add(new Next(name, seed ? club + 1 : 0, seed && club < byes, place == places + 1));
            }
        }

        private static List<Integer> numbers(String cell) {
            return cell.isBlank()
                    ? List.of()
                    : Arrays.stream(cell.split(","))
                            .map(n -> Integer.parseInt(n.strip()))
                            .toList();
        }

        private List<Integer> linesOf(int seed) {
            return seedLines.get(seed <= 2 ? seed - 1 : seed <= 4 ? 2 : seed <= 8 ? 3 : 4);
        }

        private static int beside(int line) {
            return line % 2 == 1 ? line + 1 : line - 1;
        }

        List<String> draw(String words) {
            fewest = Integer.MAX_VALUE;
            Arrays.fill(at, null);
            count(0); // finds the smallest cost
            Numbers numbers = new Numbers(words, "knockout");
            for (int step = 0; step < order.size(); step++) {
                List<Integer> choices = new ArrayList<>();
                List<BigInteger> weights = new ArrayList<>();
                for (int line : open(order.get(step))) {
                    put(order.get(step), line);
                    long ways = count(step + 1);
                    take(order.get(step), line);
                    if (ways > 0) {
                        choices.add(line);
                        weights.add(BigInteger.valueOf(ways));
                    }
                }
                put(order.get(step), choices.get(chosen(weights, numbers)));
            }
            return Arrays.stream(at)
                    .skip(1)
                    .map(name -> name == null ? BYE : name)
                    .toList();
        }

        private static int chosen(List<BigInteger> weights, Numbers numbers) {
            if (weights.size() == 1) {
                return 0;
            }
            BigInteger common = weights.stream().reduce(BigInteger.ZERO, BigInteger::gcd);
            BigInteger sum = weights.stream().reduce(BigInteger.ZERO, BigInteger::add);
            BigInteger left = numbers.oneOf(sum.divide(common));
            for (int i = 0; ; i++) {
                left = left.subtract(weights.get(i).divide(common));
                if (left.signum() < 0) {
                    return i;
                }
            }
        }

        private List<Integer> open(Next next) {
            if (next.name().equals(BYE)) {
                return linesOf(next.number()).stream()
                        .filter(line -> at[line] == null && at[beside(line)] == null)
                        .map(Stranger::beside)
                        .sorted()
                        .toList();
            }
            if (next.number() > 0) {
                return linesOf(next.number()).stream()
                        .filter(line -> at[line] == null)
                        .toList();
            }
            return IntStream.rangeClosed(1, lines)
                    .filter(line -> at[line] == null || at[line].equals(KEPT) && next.mayMeetBye())
                    .boxed()
                    .toList();
        }

        private void put(Next next, int line) {
            at[line] = next.name();
            if (next.withBye()) {
                at[beside(line)] = BYE;
            }
            if (next.name().equals(BYE)) {
                at[beside(line)] = KEPT;
            }
        }

        private void take(Next next, int line) {
            boolean wasKept = next.number() == 0 && BYE.equals(at[beside(line)]);
            at[line] = wasKept ? KEPT : null;
            if (next.withBye() || next.name().equals(BYE)) {
                at[beside(line)] = null;
            }
        }

        /** Brackets of the smallest cost that begin like this. */
        private long count(int step) {
            brackets = 0;
            list(step);
            return brackets;
        }

        private void list(int step) {
            if (step == order.size()) {
                int cost = cost();
                if (cost < fewest) {
                    fewest = cost;
                    brackets = 0;
                }
                brackets += cost == fewest ? 1 : 0;
                return;
            }
            Next next = order.get(step);
            for (int line : open(next)) {
                put(next, line);
                list(step + 1);
                take(next, line);
            }
        }

        private int cost() {
            int meetings = 0;
            for (int line = 1; line < lines; line += 2) {
                boolean played = !at[line].equals(BYE) && !at[line + 1].equals(BYE);
                meetings += played && pool(at[line]).equals(pool(at[line + 1])) ? 1 : 0;
            }
            int halves = 0;
            for (String pool : lines > 2 && fromEach > 1 ? pools : List.<String>of()) {
                halves += (line(pool + "-1") <= lines / 2) == (line(pool + "-2") <= lines / 2) ? 1 : 0;
            }
            return 1_000 * meetings + halves;
        }

        private static String pool(String source) {
            return source.substring(0, source.indexOf('-'));
        }

        private int line(String source) {
            return Arrays.asList(at).indexOf(source);
        }
    }

    @Test
    void the_table_of_the_page_is_complete() throws IOException {
        for (int lines : new int[] {2, 4, 8, 16, 32}) {
            for (Seeding seeding : Seeding.values()) {
                Optional<String> row = Files.readAllLines(PAGE).stream()
                        .filter(line -> line.startsWith("| " + lines + " | " + seeding.code() + " |"))
                        .findFirst();
                assertThat(Arrays.stream(row.orElseThrow().split("\\|"))
                                .skip(3)
                                .map(Stranger::numbers)
                                .filter(group -> !group.isEmpty())
                                .toList())
                        .as(lines + " " + seeding)
                        .isEqualTo(SeedLines.groups(lines, seeding));
            }
        }
    }
}
