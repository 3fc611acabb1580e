package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code check}, {@code standings} and {@code needs} on folders, sound and as bad as they come. */
class FolderCommandsTest {
    @TempDir
    private Path folder;

    /** Rubbers won 21-10 and lost 10-21: the points follow the rubbers. */
    private static void tie(
            List<String> ties, List<String> results, String code, String home, String away, int homeRubbers) {
        ties.add(code + ",pool,B," + (ties.size()) + "," + home + "," + away);
        for (int rubber = 1; rubber <= 5; rubber++) {
            results.add(code + "," + rubber + "," + (rubber <= homeRubbers ? "21,10" : "10,21") + ",played");
        }
    }

    /** Sudirman Cup 2019, group 1B (IANS, 22 May 2019): one win each; rubbers 6-4, 5-5, 4-6. */
    private void sudirman() {
        Commands.event(folder, "rubbers,5", "scoring,rally-21-cap-30", "level_teams,overall-difference");
        Commands.write(folder, "clubs.csv", "club,name", "ENG,England", "INA,Indonesia", "DEN,Denmark");
        List<String> ties = new ArrayList<>(List.of("tie,stage,pool,round,home,away"));
        List<String> results = new ArrayList<>(List.of("tie,rubber,home,away,how"));
        tie(ties, results, "T1", "INA", "ENG", 4);
        tie(ties, results, "T2", "ENG", "DEN", 3);
        tie(ties, results, "T3", "DEN", "INA", 3);
        Commands.write(folder, "ties.csv", ties.toArray(new String[0]));
        Commands.write(folder, "results.csv", results.toArray(new String[0]));
    }

    @Test
    void places_the_clubs_of_a_published_group_with_the_promised_columns() {
        sudirman();
        Commands.Ran ran = Commands.run("standings", folder, "--csv");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0))
                .containsExactly(
                        "pool",
                        "place",
                        "club",
                        "ties_won",
                        "ties_lost",
                        "rubbers_won",
                        "rubbers_lost",
                        "points_for",
                        "points_against",
                        "decided_by",
                        "points");
        assertThat(ran.rows())
                .extracting(row -> row.subList(0, 9))
                .containsExactly(
                        List.of("B", "1", "INA", "1", "1", "6", "4", "166", "144"),
                        List.of("B", "2", "DEN", "1", "1", "5", "5", "155", "155"),
                        List.of("B", "3", "ENG", "1", "1", "4", "6", "144", "166"));
        assertThat(ran.rows()).allSatisfy(row -> {
            assertThat(row.get(9)).contains("rubbers difference");
            assertThat(row.get(10)).isEqualTo("1");
        });
    }

    /** The same group with weights and a point for each of them: Denmark, that won rubbers 4 and 5 alone in T3's place, by hand. */
    @Test
    void ties_follow_the_weights_and_columns_count_rubbers() {
        sudirman();
        Commands.event(
                folder,
                "rubbers,5",
                "scoring,rally-21-cap-30",
                "rubber_weights,1/1/1/4/4",
                "tie_points,rubbers+2/1/0",
                "level_teams,overall-difference");
        Commands.Ran ran = Commands.run("standings", folder, "--csv");
        assertThat(ran.err()).isEmpty();
        // INA 4-1 ENG: 1+1+1+4 of 11 and the tie; ENG 3-2 DEN and DEN 3-2 INA: 3 of 11, so that the other club has won.
        assertThat(ran.rows())
                .extracting(row -> List.of(row.get(2), row.get(3), row.get(5), row.get(6), row.get(10)))
                .containsExactly(
                        List.of("INA", "2", "6", "4", "19"),
                        List.of("DEN", "1", "5", "5", "13"),
                        List.of("ENG", "0", "4", "6", "7"));
    }

    @Test
    void says_where_conditions_do_not_fit_together_and_how_they_would() {
        sudirman();
        Commands.event(folder, "rubbers,5", "rubber_weights,6/4/3", "heat_caution_wbgt,32", "tie_points,rubbers+");
        Commands.Ran ran = Commands.run("check", folder);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out() + ran.err())
                .contains(
                        "conditions.csv:4: value: rubber_weights weighs 3 rubbers, and a tie has 5; give each rubber its weight")
                .contains(
                        "conditions.csv:6: value: heat_stop_wbgt stops play at 31 degrees, before caution begins at 32;")
                .contains("tie_points cannot be \"rubbers+\"");
        Commands.event(folder, "rubber_weights,0/1/1/1");
        assertThat(Commands.run("check", folder).err()).contains("it is a whole number from 1 to 99 for each rubber");
    }

    @Test
    void has_a_column_for_drawn_ties_where_a_tie_can_be_drawn() {
        sudirman();
        Commands.event(folder, "rubbers,6", "scoring,rally-21-cap-30", "decider,none", "tie_points,2/1/0");
        assertThat(Commands.run("standings", folder, "--csv").csv().get(0)).endsWith("points", "ties_drawn");
        assertThat(Commands.run("standings", folder).out())
                .contains("ties drawn")
                .doesNotContain("ties_drawn");
    }

    @Test
    void says_what_a_club_needs_and_where_it_can_end() {
        sudirman();
        Commands.write(
                folder,
                "results.csv",
                "tie,rubber,home,away,how",
                "T1,1,21,10,played",
                "T1,2,21,10,played",
                "T1,3,21,10,played",
                "T1,4,21,10,played",
                "T1,5,10,21,played",
                "T2,1,21,10,played",
                "T2,2,21,10,played",
                "T2,3,21,10,played",
                "T2,4,10,21,played",
                "T2,5,10,21,played");
        Commands.Ran ran = Commands.run("needs", folder, "--club", "INA", "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("club", "statement", "places");
        // Beaten 0-5 Indonesia has rubbers 4-6 like England, which it has beaten: two left, so it stays second.
        assertThat(ran.rows()).allMatch(row -> row.get(0).equals("INA"));
        assertThat(ran.rows().get(0).get(2)).isEqualTo("1-2");
        assertThat(ran.rows())
                .anyMatch(row -> row.get(1).startsWith("if it beats DEN: place 1")
                        && row.get(2).equals("1"));
        assertThat(Commands.run("needs", folder, "--club", "FRA").status()).isEqualTo(2);
        assertThat(Commands.run("needs", folder).status()).isEqualTo(2);
    }

    @Test
    void finds_nothing_wrong_with_a_sound_folder() {
        sudirman();
        Commands.Ran ran = Commands.run("check", folder, "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).isEqualTo("file,line,column,reason\n");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void names_every_fault_of_every_file_at_once_with_file_line_and_column() {
        sudirman();
        Commands.event(folder, "rubbers,5", "scoring,rally-21-cap-30", "colour,blue", "decider,coin");
        Commands.write(
                folder, "clubs.csv", "club,name", "ENG,England", "INA,Indonesia", "DEN,Denmark", "ENG,England again");
        Commands.write(
                folder, "players.csv", "player,club,name,rank,present", "p1,ENG,Ann,1,yes", "p1,NOR,Bo,first,maybe");
        Commands.write(
                folder,
                "ties.csv",
                "tie,stage,pool,round,home,away",
                "T1,pool,B,1,INA,INA",
                "T2,group,B,2,ENG,NOR",
                "T3,pool,,3,DEN,INA");
        Commands.write(
                folder,
                "results.csv",
                "tie,rubber,home,away,how",
                "T9,1,21,10,played",
                "T1,7,21,10,played",
                "T1,1,21,20,played",
                "T1,2,-3,21,won");
        Commands.Ran ran = Commands.run("check", folder, "--csv");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.csv().get(0)).containsExactly("file", "line", "column", "reason");
        assertThat(ran.rows())
                .extracting(row -> row.get(0) + ":" + row.get(1) + " " + row.get(2))
                .contains(
                        "conditions.csv:5 setting",
                        "conditions.csv:6 value",
                        "clubs.csv:5 club",
                        "players.csv:3 player",
                        "players.csv:3 club",
                        "players.csv:3 rank",
                        "players.csv:3 present",
                        "ties.csv:2 away",
                        "ties.csv:3 stage",
                        "ties.csv:3 away",
                        "ties.csv:4 pool",
                        "results.csv:2 tie",
                        "results.csv:3 rubber",
                        "results.csv:4 home",
                        "results.csv:5 home",
                        "results.csv:5 how");
        assertThat(ran.err()).as("each fault once, in the rows").isEmpty();
        Commands.Ran people = Commands.run("check", folder);
        assertThat(people.out()).isEmpty();
        assertThat(people.errLines())
                .hasSameSizeAs(ran.rows())
                .allMatch(line -> line.matches("[a-z]+\\.csv:\\d+: [a-z_]+: .+"));
        for (String command : new String[] {"standings", "needs", "sheets-count"}) {
            Commands.Ran refused = command.equals("standings")
                    ? Commands.run(command, folder)
                    : Commands.run(command, folder, "--club", "ENG");
            assertThat(refused.status()).as(command).isEqualTo(2);
            assertThat(refused.out()).as(command).isEmpty();
            assertThat(refused.errLines()).as(command).containsExactlyElementsOf(people.errLines());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"event.csv", "conditions.csv", "clubs.csv", "players.csv", "ties.csv", "results.csv"})
    void refuses_an_empty_file_an_unknown_column_and_bytes_that_are_no_text(String name) throws Exception {
        sudirman();
        for (byte[] bytes : List.of(
                new byte[0],
                "colour,size\n1,2\n".getBytes(),
                new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1},
                "a,\"b\n".getBytes())) {
            Files.write(folder.resolve(name), bytes);
            Commands.Ran ran = Commands.run("check", folder);
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.err()).contains(name + ":1: ");
        }
    }

    @Test
    void reads_a_byte_order_mark_crlf_columns_in_any_order_and_only_headers() throws Exception {
        sudirman();
        String before = Commands.run("standings", folder, "--csv").out();
        for (String name : List.of("event.csv", "conditions.csv", "clubs.csv", "ties.csv", "results.csv")) {
            String text = Files.readString(folder.resolve(name));
            Files.writeString(folder.resolve(name), "\uFEFF" + text.replace("\n", "\r\n"));
        }
        Commands.write(folder, "clubs.csv", "name,club", "England,ENG", "Indonesia,INA", "Denmark,DEN");
        Commands.write(folder, "players.csv", "player,club,name");
        Commands.write(folder, "withdrawals.csv", "club");
        assertThat(Commands.run("standings", folder, "--csv").out()).isEqualTo(before);
        Commands.write(folder, "ties.csv", "tie,stage,round");
        Files.delete(folder.resolve("results.csv"));
        Commands.Ran noTies = Commands.run("standings", folder, "--csv");
        assertThat(noTies.status()).isZero();
        assertThat(noTies.rows()).isEmpty();
    }

    /** Ten megabytes: 400,000 rows of one rubber, each a fault; answered, not drowned in. */
    @Test
    void answers_a_huge_file() {
        sudirman();
        StringBuilder rows = new StringBuilder("tie,rubber,home,away,how\n");
        while (rows.length() < 10_000_000) {
            rows.append("T1,1,21,10,played-long-ago\n");
        }
        Commands.write(folder, "results.csv", rows.toString());
        Commands.Ran ran = Commands.run("standings", folder);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("results.csv:2: how: ");
    }

    @Test
    void refuses_what_is_no_folder_and_a_command_that_is_none() throws Exception {
        assertThat(Commands.run("check", folder.resolve("nowhere")).status()).isEqualTo(2);
        assertThat(Commands.run("check", folder).err()).contains("event.csv:1: ");
        assertThat(Commands.run("check", Files.createFile(folder.resolve("file")))
                        .status())
                .isEqualTo(2);
        assertThat(Commands.run("fly").status()).isEqualTo(2);
    }

    @Test
    void a_mistyped_command_is_answered_with_the_commands_and_no_guess() {
        Commands.Ran ran = Commands.run("erasse", folder, "--csv");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith("There is no command \"erasse\". The commands are ")
                .contains("timetable");
        assertThat(ran.err().toLowerCase(java.util.Locale.ROOT)).doesNotContain("did you mean");
        assertThat(Commands.run("timetable", folder, "--seed", "x").err()).contains("'x' is not a whole number");
        assertThat(Commands.run("needs", folder, "--clubb", "ENG").err())
                .contains("--club", "tiewright needs --help")
                .doesNotContain("Did you mean");
    }

    @Test
    void no_break_spaces_around_values_are_no_part_of_them() {
        sudirman();
        String before = Commands.run("standings", folder, "--csv").out();
        Commands.write(
                folder,
                "clubs.csv",
                "club,name",
                "\u00a0ENG\u202f,England",
                "INA\u00a0,Indonesia",
                "\u200bDEN,Denmark");
        assertThat(Commands.run("standings", folder, "--csv").err()).isEmpty();
        assertThat(Commands.run("standings", folder, "--csv").out()).isEqualTo(before);
    }

    /** Rubber 3 is none of the two of these conditions; the receipt of the whole sheet is another matter. */
    @Test
    void a_sheet_with_a_row_that_cannot_be_read_is_not_said_to_have_a_false_receipt() {
        Commands.event(folder, "rubbers,2");
        Commands.write(folder, "clubs.csv", "club,name", "A,Aa", "B,Bb");
        Commands.write(folder, "ties.csv", "tie,stage,pool,round,home,away", "T1,pool,P,1,A,B");
        String proof = "10:00," + "0".repeat(64) + "," + "1".repeat(64);
        Commands.write(
                folder,
                "sheets.csv",
                "tie,club,rubber,player_1,player_2,opened_at,receipt,secret",
                "T1,A,1,a,b," + proof,
                "T1,A,3,c,d," + proof);
        Commands.Ran ran = Commands.run("check", folder);
        assertThat(ran.err()).contains("sheets.csv:3: rubber: ").doesNotContain("not the receipt");
        Commands.write(
                folder,
                "sheets.csv",
                "tie,club,rubber,player_1,player_2,opened_at,receipt,secret",
                "T1,A,1,a,b," + proof);
        assertThat(Commands.run("check", folder).err()).contains("sheets.csv:2: receipt: this is not the receipt");
    }

    @Test
    void a_value_of_300_000_characters_is_not_printed_whole() {
        sudirman();
        String long300 = "x".repeat(300_000);
        Commands.write(folder, "clubs.csv", "club,name," + long300, "ENG,England," + long300, long300 + ",Denmark,1");
        Commands.write(folder, "courts.csv", "court,from,until", "1," + long300 + ",");
        Commands.Ran ran = Commands.run("check", folder, "--csv");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.rows()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(ran.out()).contains("is not a code: use 1 to 40 characters", "is not a time such as 13:20");
        assertThat(ran.out().length()).isLessThan(8_000);
        assertThat(ran.out()).doesNotContain("x".repeat(250));
    }

    @Test
    void a_command_without_what_it_needs_is_refused() {
        assertThat(Commands.run("check").status()).isEqualTo(2);
    }
}
