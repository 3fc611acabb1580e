package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rain day worked out by hand, from files: six clubs, three rounds left, four courts, everything shuts at 17:00. */
class TimetableCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void write() {
        Commands.event(folder);
        Commands.write(
                folder,
                "clubs.csv",
                "club,name",
                "A,Alder Quay",
                "B,Brackenfold",
                "C,Corrie Vale",
                "D,Dunlin Cross",
                "E,Elmstow",
                "F,Farrow Mill");
        Commands.write(folder, "courts.csv", "court,from,until", "1,,17:00", "2,,17:00", "3,,17:00", "4,,17:00");
        Commands.write(
                folder,
                "ties.csv",
                "tie,stage,pool,round,home,away",
                "T1,pool,P,3,A,F",
                "T2,pool,P,3,B,E",
                "T3,pool,P,3,C,D",
                "T4,pool,P,4,F,D",
                "T5,pool,P,4,E,C",
                "T6,pool,P,4,A,B",
                "T7,pool,P,5,B,F",
                "T8,pool,P,5,C,A",
                "T9,pool,P,5,D,E");
    }

    @Test
    void gives_every_rubber_its_slot_court_and_times() {
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("option", "tie", "rubber", "slot", "court", "start", "end");
        assertThat(ran.rows())
                .hasSize(36)
                .allSatisfy(row -> assertThat(row.get(0)).isEqualTo("as-is"));
        assertThat(ran.rows().stream().map(row -> row.get(3)).distinct()).hasSize(9);
        assertThat(ran.rows().get(0)).endsWith("09:30", "09:50");
        assertThat(ran.rows().get(35)).endsWith("12:10", "12:30");
        assertThat(ran.err()).contains("seed 1");
        assertThat(Commands.run("timetable", folder, "--slot-minutes", "20", "--csv")
                        .out())
                .isEqualTo(ran.out());
    }

    @Test
    void shows_the_options_when_the_day_no_longer_fits() {
        Commands.Ran ran =
                Commands.run("timetable", folder, "--slot-minutes", "20", "--replan", "14:30", "--options", "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0))
                .containsExactly("option", "finish", "lower_bound", "feasible", "cost", "people_to_tell");
        Map<String, List<String>> rows = ran.rows().stream().collect(Collectors.toMap(row -> row.get(0), row -> row));
        assertThat(rows.get("as-is")).containsExactly("as-is", "17:30", "17:30", "no", "0.0", "6");
        assertThat(rows.get("shorter-games").subList(1, 4)).containsExactly("16:36", "16:36", "yes");
        assertThat(rows.get("rally-scoring").subList(1, 4)).containsExactly("16:45", "16:45", "yes");
        assertThat(rows.get("fewer-rounds").subList(1, 5)).containsExactly("16:30", "16:30", "yes", "12.0");
        assertThat(ran.err()).contains("Impossible as it is: it would end at 17:30.", "opponents");
    }

    @Test
    void prints_the_plan_of_each_option() {
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--replan", "14:30", "--csv");
        Map<String, Long> rows =
                ran.rows().stream().collect(Collectors.groupingBy(row -> row.get(0), Collectors.counting()));
        assertThat(rows)
                .containsEntry("as-is", 36L)
                .containsEntry("shorter-games", 36L)
                .containsEntry("fewer-rounds", 24L);
        assertThat(ran.rows())
                .filteredOn(
                        row -> row.get(0).equals("shorter-games") && row.get(3).equals("2"))
                .allSatisfy(row -> assertThat(row.subList(5, 7)).containsExactly("14:44", "14:58"));
    }

    @Test
    void a_day_that_is_too_short_is_impossible_as_asked() {
        Commands.write(folder, "courts.csv", "court,from,until", "1,,11:00", "2,,11:00", "3,,11:00", "4,,11:00");
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--csv");
        assertThat(ran.status()).isEqualTo(4);
        assertThat(ran.err())
                .contains(
                        "These cannot all hold from 09:30 on: 36 rubbers on 4 courts in slots of 20 minutes, the closing at 11:00.");
    }

    @Test
    void says_in_one_sentence_what_contradicts_itself() {
        Commands.write(folder, "courts.csv", "court,from,until", "1,,", "Annex,12:00,10:00");
        Commands.Ran ran = Commands.run("timetable", folder, "--csv");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("courts.csv:3: until: court Annex closes at 10:00, before it opens at 12:00");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void refuses_a_club_with_two_ties_at_one_time() {
        Commands.write(
                folder,
                "ties.csv",
                "tie,stage,pool,round,home,away,start",
                "T1,pool,P,1,A,F,09:30",
                "T2,pool,P,1,B,A,09:30");
        Commands.Ran ran = Commands.run("timetable", folder, "--csv");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("A would be in two ties at once: T1 at 09:30 and T2 at 09:30.");
    }

    @Test
    void refuses_a_court_that_is_none_and_a_freeze_below_zero() {
        Commands.Ran lost = Commands.run("timetable", folder, "--lost", "2,99", "--csv");
        assertThat(lost.status()).isEqualTo(2);
        assertThat(lost.err()).contains("There is no court 99", "1, 2, 3, 4");
        Commands.Ran freeze = Commands.run("timetable", folder, "--replan", "10:00", "--freeze", "-1");
        assertThat(freeze.status()).isEqualTo(2);
        assertThat(freeze.err()).contains("--freeze is a number from 0 to 180.");
    }

    private void published(String... starts) {
        List<String> rows = new java.util.ArrayList<>(List.of("tie,stage,pool,round,home,away,start,court"));
        rows.addAll(List.of(starts));
        Commands.write(folder, "ties.csv", rows.toArray(new String[0]));
    }

    /** Club day freezes 20 minutes; without a freeze a start goes onto the slots from 10:00 on, and never before what was published. */
    @Test
    void a_replan_takes_the_freeze_of_the_conditions_when_none_is_given() {
        published("T1,pool,P,1,A,B,10:15,3", "T2,pool,P,1,C,D,10:25,1");
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--replan", "10:00", "--csv");
        assertThat(ran.rows())
                .filteredOn(row ->
                        !row.get(0).equals("rubber-by-rubber") && row.get(1).equals("T1"))
                .allSatisfy(row -> assertThat(row.get(5)).isGreaterThanOrEqualTo("10:15"))
                .filteredOn(row -> row.get(2).equals("1"))
                .allSatisfy(row -> assertThat(row.get(5)).isEqualTo("10:15"));
        assertThat(Commands.run(
                                "timetable",
                                folder,
                                "--slot-minutes",
                                "20",
                                "--replan",
                                "10:00",
                                "--freeze",
                                "0",
                                "--csv")
                        .rows())
                .as("games are shorter, the slots go on from 10:00")
                .filteredOn(
                        row -> row.get(0).equals("shorter-games") && row.get(1).equals("T1"))
                .allSatisfy(row -> assertThat(row.get(5)).isGreaterThan("10:15"));
    }

    /** T1 has one rubber left, on court until 12:20; T2 has the same club and is published for 12:10 on another court. */
    @Test
    void a_frozen_start_that_would_book_a_club_twice_is_moved_and_said() {
        published("T1,pool,P,1,A,B,11:20,1", "T2,pool,P,2,A,C,12:10,2");
        Commands.write(
                folder,
                "results.csv",
                "tie,rubber,home,away,how",
                "T1,1,11,5,played",
                "T1,2,11,5,played",
                "T1,3,5,11,played");
        Commands.Ran ran = Commands.run(
                "timetable", folder, "--slot-minutes", "20", "--replan", "12:00", "--freeze", "20", "--csv");
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.err())
                .contains(
                        "Tie T2 is published for 12:10",
                        "A is in tie T1",
                        "to 12:20",
                        "10 minutes of rest",
                        "another time");
        assertThat(ran.rows())
                .filteredOn(row -> row.get(0).equals("as-is") && row.get(1).equals("T1"))
                .allSatisfy(row -> assertThat(row.get(6)).isEqualTo("12:20"));
        assertThat(ran.rows())
                .filteredOn(row -> row.get(0).equals("as-is") && row.get(1).equals("T2"))
                .hasSize(4)
                .allSatisfy(row -> assertThat(row.get(5)).isGreaterThanOrEqualTo("12:30"));
    }

    /** Once two ties of a club are both published within the freeze, the later one gives way. */
    @Test
    void of_two_frozen_starts_of_one_club_the_later_one_is_moved() {
        published("T1,pool,P,1,A,B,12:05,1", "T2,pool,P,1,A,C,12:15,2", "T3,pool,P,1,D,E,12:15,3");
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--replan", "12:00", "--csv");
        assertThat(ran.err()).contains("Tie T2 is published for 12:15").doesNotContain("Tie T1 is", "Tie T3 is");
        assertThat(ran.rows())
                .filteredOn(row -> row.get(0).equals("as-is") && row.get(1).equals("T1"))
                .anySatisfy(row -> assertThat(row.get(5)).isEqualTo("12:05"));
    }

    /** At 12:56 nothing of rounds 2 and 3 is played, and the semi-finals are published for 13:15. */
    @Test
    void the_demo_day_that_breaks_at_12_56_has_options_and_a_true_reason() {
        Path demo = Path.of("..", "demo-data", "event");
        Commands.Ran ran = Commands.run("timetable", demo, "--replan", "12:56", "--options", "--csv");
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.rows()).hasSizeGreaterThan(3).anyMatch(row -> row.get(3).equals("yes"));
        assertThat(ran.err())
                .contains("Tie SF1 is published for 13:15", "Tie SF2 is published for 13:15", "cannot be over")
                .doesNotContain("never open together");
    }

    /** 36 rubbers of 20 minutes on three courts are four hours: from 09:30 they would be over at 13:30. */
    @Test
    void a_day_that_is_long_for_being_played_side_by_side_says_so_and_offers_rubber_by_rubber() {
        Commands.write(folder, "courts.csv", "court,from,until", "1,,13:45", "2,,13:45", "3,,13:45");
        Commands.Ran ran = Commands.run(
                "timetable", folder, "--slot-minutes", "20", "--courts-per-tie", "3", "--options", "--csv");
        assertThat(ran.err())
                .contains("while the rubbers of a tie are played side by side", "36 rubbers alone", "until 13:30");
        Map<String, List<String>> rows = ran.rows().stream().collect(Collectors.toMap(row -> row.get(0), row -> row));
        assertThat(rows.get("as-is").get(3)).isEqualTo("no");
        assertThat(rows.get("rubber-by-rubber").get(1))
                .isLessThan(rows.get("as-is").get(1));
        assertThat(ran.err()).contains("rubber-by-rubber: The rubbers of a tie no longer start together");
    }

    @Test
    void a_day_past_midnight_is_planned_and_replanned() {
        String event = "key,value\nname,Night\ndate,2026-10-03\nvenue,Hall\ntime_zone,Europe/Lisbon\nstarts,22:30\n";
        Commands.write(folder, "event.csv", event);
        Commands.write(folder, "courts.csv", "court,from,until", "1,,", "2,,");
        published(
                "T1,pool,P,1,A,B,23:30,1",
                "T2,pool,P,1,C,D,23:59,2",
                "T3,pool,P,2,A,C,00:10,1",
                "T4,pool,P,2,B,D,01:30,2");
        Commands.write(folder, "results.csv", "tie,rubber,home,away,how", "T1,1,11,5,played", "T1,2,11,5,played");
        for (String now : List.of("22:40", "23:35", "23:50", "23:59", "00:00", "00:20", "01:25")) {
            Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--replan", now, "--csv");
            assertThat(ran.err()).as(now).doesNotContain("Something is wrong");
            assertThat(ran.status()).as(now + ran.err()).isZero();
        }
        Commands.Ran whole = Commands.run("timetable", folder, "--slot-minutes", "90", "--csv");
        assertThat(whole.status()).as(whole.err()).isZero();
        assertThat(whole.rows()).anyMatch(row -> row.get(6).compareTo("12:00") < 0);
    }

    /** Two courts that are never open together long enough: the last round of the pool is played one tie after the other. */
    @Test
    void a_last_round_begins_together_only_where_the_courts_are_open_for_it() {
        published("T1,pool,P,1,A,B,,", "T2,pool,P,1,C,D,,", "T3,pool,P,2,A,C,,", "T4,pool,P,2,B,D,,");
        Commands.write(folder, "courts.csv", "court,from,until", "1,09:00,10:30", "2,10:00,16:00");
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--csv");
        assertThat(ran.err()).doesNotContain("No order");
        assertThat(ran.rows()).hasSize(16);
    }

    @Test
    void no_slot_is_negative() {
        published("T1,pool,P,1,A,B,09:30,1", "T2,pool,P,2,A,C,11:30,1");
        Commands.write(folder, "players.csv", "player,club,name");
        Commands.write(folder, "results.csv", "tie,rubber,home,away,how", "T1,1,11,5,played");
        Commands.Ran ran = Commands.run("timetable", folder, "--slot-minutes", "20", "--replan", "10:55", "--csv");
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.rows())
                .allSatisfy(row -> assertThat(Integer.parseInt(row.get(3))).isNotNegative());
    }

    @Test
    void refuses_what_is_no_time_or_no_slot_and_asks_for_the_files_it_needs() {
        assertThat(Commands.run("timetable", folder, "--replan", "half past").status())
                .isEqualTo(2);
        assertThat(Commands.run("timetable", folder, "--slot-minutes", "0").err())
                .contains("--slot-minutes is a number from 1 to 600.");
        Commands.Ran late = Commands.run("timetable", folder, "--replan", "17:10", "--options");
        assertThat(late.status()).isEqualTo(2);
        assertThat(late.err()).contains("The plan would begin at 17:10, and everything closes at 17:00.");
        folder.resolve("courts.csv").toFile().delete();
        assertThat(Commands.run("timetable", folder).err()).contains("courts.csv");
    }
}
