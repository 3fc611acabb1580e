package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tiewright.desk.RetimeTie;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.Penalty;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.TieId;

/** What notices and rulings say: always the same facts, in the words in which decisions used to write them themselves. */
class NoticesTest {
    private static final Pattern CODE = Pattern.compile("(?<![a-zA-Z./])notices\\.[a-z][a-z-]*");

    private static Days semifinal() {
        return Days.aDay()
                .clubs("N", "S")
                .courts("1", "2")
                .knockoutTie("F", 2, "A-1", "winner-SF2")
                .timed("F", "10:00", "1")
                .by(Days.desk());
    }

    private static RetimeTie later() {
        return new RetimeTie(TieId.of("F"), Optional.of(LocalTime.of(11, 0)), Optional.of("2"), "rain");
    }

    private static DrawFact.SlotFilled filled(Side side, String club) {
        return new DrawFact.SlotFilled(TieId.of("F"), side, ClubId.of(club));
    }

    private static List<String> all(Event event) {
        List<String> lines = new ArrayList<>();
        event.notices().forEach(posted -> {
            lines.add(Days.said(posted.notice().text()));
            posted.notice().before().map(Days::said).ifPresent(lines::add);
            posted.notice().after().map(Days::said).ifPresent(lines::add);
            lines.add(Days.said(posted.notice().reason()));
            posted.between().map(Days::said).ifPresent(lines::add);
        });
        event.order().under(1).forEach(change -> lines.add(Days.said(change.between())));
        return lines;
    }

    @Test
    void a_notice_posted_before_its_slots_fill_says_the_same_after_and_when_a_club_is_renamed() {
        Days day = semifinal().does(later());
        List<String> posted = all(day.event());
        assertThat(posted)
                .containsExactly(
                        "Tie F",
                        "10:00, court 1",
                        "11:00, court 2",
                        "rain",
                        "1st of pool A v winner of SF2",
                        "1st of pool A v winner of SF2");
        day.fact(filled(Side.HOME, "N"), filled(Side.AWAY, "S"));
        assertThat(all(day.event())).isEqualTo(posted);
        Days full =
                semifinal().fact(filled(Side.HOME, "N"), filled(Side.AWAY, "S")).does(later());
        List<String> named = all(full.event());
        assertThat(named).endsWith("Club N v Club S");
        full.fact(new SetUpFact.ClubEntered(ClubId.of("N"), "Other Name", Optional.empty(), OptionalInt.empty()));
        assertThat(all(full.event())).isEqualTo(named);
    }

    @Test
    void old_rows_say_what_they_said() {
        Days day = semifinal()
                .fact(new OfficialFact.NoticePosted(
                        1, "Tie {x} 'F'", Optional.of(TieId.of("F")), Optional.of("10:00"), Optional.of(""), "rain"))
                .fact(new OfficialFact.RulingGiven(1, "a", "b", "c", "d"));
        assertThat(all(day.event()))
                .containsExactly(
                        "Tie {x} 'F'",
                        "10:00",
                        "",
                        "rain",
                        "1st of pool A v winner of SF2",
                        "1st of pool A v winner of SF2");
        assertThat(day.event().rulings())
                .containsExactly(new OfficialFact.RulingStated(1, Saying.typed("a"), Saying.typed("b"), "c", "d"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "notices.time{time=no;place=none}|no time yet",
                "notices.time{time=yes;start=10:20;place=numbered;court=3}|10:20, court 3",
                "notices.time{time=no;place=named;court=Long Hall}|no time yet, Long Hall",
                "notices.new-times{ties=1}|1 tie has a new time",
                "notices.first-times{ties=9}|The order of play is out: 9 ties have their times",
                "notices.new-times-or-courts{ties=3}|3 ties have a new time or court",
                "notices.new-times-or-none{ties=2}|2 ties have a new time or none",
                "notices.score{games=11-3\\, 5-11;how=played}|11-3, 5-11",
                "notices.score{games=7-3;how=retired-home}|7-3 retired-home",
                "notices.score-of-none{how=void}|void",
                "notices.score-of-decider{tie=F}|Score of tie F, decider",
                "notices.about-tie{about=[notices.protest{number=1;club=Club N}];tie=A1}|Protest 1 of Club N, tie A1",
                "notices.lot-order{clubs=[typed{words=N},typed{words=S}]}|N, S",
                "notices.plan-ruled{parts=[notices.not-played{ties=[typed{words=A2}]},notices.another-day{ties=[typed{words=A1},typed{words=A3}]}]}|Not played and counted nowhere: A2. Played on another day: A1, A3.",
                "notices.place-of-pool{place=2;pool=A}|2nd of pool A",
                "notices.place-of-pool{place=11;pool=A}|11th of pool A",
                "notices.ruled{about=[notices.sheet-in-tie{club=N;tie=A1}];ruled=[notices.penalty-rubbers-lost{club=N;rubbers=[typed{words=2},typed{words=3}]}];number=4}|The sheet of N in tie A1. N loses rubber 2, 3. Ruling 4."
            })
    void says_in_english_what_decisions_used_to_write(String saying, String english) {
        assertThat(Days.said(Saying.ofText(saying))).isEqualTo(english);
    }

    private static Set<String> codes() throws Exception {
        Path classes = Path.of(
                Event.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (Stream<Path> files = Files.walk(classes.resolve("tiewright"))) {
            List<Path> all =
                    files.filter(file -> file.toString().endsWith(".class")).toList();
            Set<String> codes = new TreeSet<>();
            for (Path file : all) {
                String text = Files.readString(file, StandardCharsets.ISO_8859_1);
                codes.addAll(
                        CODE.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet()));
            }
            return codes;
        }
    }

    private static Stream<String> completed(String code) {
        return switch (code) {
            case "notices.correction-" ->
                Arrays.stream(CorrectionChoice.values()).map(one -> code + one.code());
            case "notices.penalty-" -> Arrays.stream(Penalty.values()).map(one -> code + one.code());
            case "notices.missing-", "notices.supplied-" -> Stream.of(code + "sheet", code + "decider");
            default -> Stream.of(code);
        };
    }

    @Test
    void every_code_has_its_sentence_and_every_sentence_its_code() throws Exception {
        assertThat(codes().stream().flatMap(NoticesTest::completed))
                .containsExactlyInAnyOrderElementsOf(sentences().stringPropertyNames());
    }

    private static Properties sentences() throws IOException {
        Properties sentences = new Properties();
        try (var in = Words.class.getResourceAsStream("/tiewright/wording/notices.properties")) {
            sentences.load(in);
        }
        return sentences;
    }

    static Stream<How> hows() {
        return Arrays.stream(How.values());
    }

    @ParameterizedTest
    @MethodSource("hows")
    void a_score_says_how_it_ended_unless_it_was_played(How how) {
        Saying score = Saying.of("notices.score").with("games", "11-3").with("how", how.code());
        assertThat(Days.said(score)).isEqualTo(how == How.PLAYED ? "11-3" : "11-3 " + how.code());
    }
}
