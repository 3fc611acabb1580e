package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.timetable.Cut;
import tiewright.timetable.Pace;
import tiewright.timetable.Part;
import tiewright.timetable.Pin;
import tiewright.timetable.TimeBudget;

class TimetableWordsTest {
    private static final Pattern CODE = Pattern.compile(
            "Reason\\.of\\(\"([a-z-]+)\"\\)|\"timetable\\.([a-z-]+)\"|\\(\"((?:bound|breach)-[a-z-]+)\"");

    /** Every code that is written in the room, and every one that is put together from a kind. */
    @Test
    void every_reason_has_its_sentence() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/tiewright/timetable"))) {
            for (Path file : files.toList()) {
                Matcher matcher = CODE.matcher(Files.readString(file));
                while (matcher.find()) {
                    codes.add(Stream.of(1, 2, 3)
                            .map(matcher::group)
                            .filter(java.util.Objects::nonNull)
                            .findFirst()
                            .orElseThrow());
                }
            }
        }
        for (Cut cut : Cut.values()) {
            codes.add("cut-" + cut.code());
        }
        for (Part part : Part.values()) {
            codes.add("why-worse-" + part.code());
        }
        for (Pin.Why why : Pin.Why.values()) {
            codes.add("why-" + why.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        }
        for (String kind : List.of("club", "round", "source", "together", "rubbers", "players")) {
            codes.add("breach-" + kind);
        }
        codes.addAll(List.of("why-round", "why-rubbers"));
        assertThat(codes)
                .hasSizeGreaterThan(60)
                .allSatisfy(code ->
                        assertThat(Words.has("timetable." + code)).as(code).isTrue());
    }

    @Test
    void a_budget_is_told_with_its_spread() {
        TimeBudget.Shape shape = new TimeBudget.Shape(6, 1, 0, 8, LocalTime.of(9, 0), LocalTime.of(20, 0));
        List<String> said =
                TimetableWords.ofCodes().budget(TimeBudget.of(shape, Conditions.of(Preset.CLUB_DAY), Pace.USUAL, 1));
        assertThat(said.get(0)).startsWith("60 rubbers in slots of 20 minutes");
        assertThat(said.get(1)).isEqualTo("It fits: 1000 of 1000 simulated days end in time.");
        assertThat(said.get(2)).contains("One day in ten ends by");
    }
}
