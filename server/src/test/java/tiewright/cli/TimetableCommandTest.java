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
                        "These cannot hold together from 09:30 on: 36 rubbers on 4 courts in slots of 20 minutes, the closing at 11:00.");
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
