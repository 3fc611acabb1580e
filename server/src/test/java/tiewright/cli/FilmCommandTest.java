package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the rallies of filmed games give, as a command. */
class FilmCommandTest {
    private static final String GAMES =
            "game,tie,rubber,format,first_server,right_1,left_1,right_2,left_2,card_1,card_2\n";
    private static final String RALLIES = "game,rally,server,ending,player,where\n";
    /** USA Pickleball rule summary (Pickleball Magazine 5-3): side one serves first, and who wins each rally; it ends 4-3. */
    private static final String PUBLISHED = "AABBBAABAABB";

    @TempDir
    Path folder;

    @BeforeEach
    void anEvent() throws IOException {
        write(
                "event.csv",
                "key,value\nname,Film day\ndate,2031-05-10\nvenue,Hall\ntime_zone,Europe/Vilnius\nstarts,09:00\n");
        write("conditions.csv", "setting,value\npreset,Club day\n");
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(folder.resolve(file), text);
    }

    private static String rallies(String game, String winners) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < winners.length(); i++) {
            text.append(game)
                    .append(',')
                    .append(i + 1)
                    .append(",,earned,")
                    .append(winners.charAt(i) == 'A' ? "a1" : "b1")
                    .append(",\n");
        }
        return text.toString();
    }

    private void game(String card, String rallies) throws IOException {
        write("games.csv", GAMES + "g,,,side-out-11,a1,a1,a2,b1,b2," + card + "\n");
        write("rallies.csv", RALLIES + rallies);
    }

    private List<String> film(int status) {
        Commands.Ran ran = Commands.run("film", folder, "--csv");
        assertThat(ran.status()).as(ran.err()).isEqualTo(status);
        assertThat(ran.csv().get(0)).containsExactly("game", "subject", "measure", "value", "out_of", "low", "high");
        return ran.rows().stream()
                .map(row -> String.join(",", row.subList(1, 5)))
                .toList();
    }

    @Test
    void score_and_counts_follow_from_who_won_each_rally() throws IOException {
        game(",", rallies("g", PUBLISHED));
        assertThat(film(0))
                .startsWith(
                        "a1+a2,score,4,",
                        "b1+b2,score,3,",
                        "a1+a2,rallies_won,6,12",
                        "b1+b2,rallies_won,6,12",
                        // side one serves rallies 1-3, 8-11 and loses the third, eighth and eleventh; side two serves
                        // 4-7 and 12
                        "a1+a2,won_serving,4,7",
                        "b1+b2,won_serving,3,5",
                        "a1+a2,won_receiving,2,5",
                        "b1+b2,won_receiving,3,7")
                .contains(
                        "a1,won_own_serve,2,4", "a2,won_own_serve,2,3", "b1,won_own_serve,3,4", "b2,won_own_serve,0,1")
                .contains("a1,earned,6,12", "a2,earned,0,12", "b1,earned,6,12", "a1,forced,0,12", "b2,gave,0,12")
                .contains("game,rallies,12,", "game,unsure,0,");
    }

    /** R. G. Newcombe, Statistics in Medicine 17:857 (1998), Table I, method 3: 15 of 148. */
    @Test
    void a_share_comes_with_the_published_interval() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= 148; i++) {
            text.append("g,")
                    .append(i)
                    .append(i <= 15 ? ",,earned,a1,\n" : i % 2 == 0 ? ",,forced,b2,\n" : ",,gave,a2,\n");
        }
        write("games.csv", GAMES + "g,,,side-out-99,a1,a1,a2,b1,b2,,\n");
        write("rallies.csv", RALLIES + text);
        List<String> row = Commands.run("film", folder, "--csv").rows().stream()
                .filter(cells -> cells.get(1).equals("a1") && cells.get(2).equals("earned"))
                .findFirst()
                .orElseThrow();
        assertThat(row.subList(3, 5)).containsExactly("15", "148");
        assertThat(Double.parseDouble(row.get(5))).isEqualTo(0.0624, within(0.00005));
        assertThat(Double.parseDouble(row.get(6))).isEqualTo(0.1605, within(0.00005));
    }

    @Test
    void forced_and_given_rallies_go_to_the_other_side_and_replayed_ones_to_nobody() throws IOException {
        game(",", "g,1,,forced,b2,\ng,2,,gave,a2,\ng,3,,replay,,\n");
        assertThat(film(0))
                .contains(
                        "a1+a2,rallies_won,1,2",
                        "b1+b2,rallies_won,1,2",
                        "a1+a2,score,1,",
                        "b2,forced,1,2",
                        "a2,gave,1,2",
                        "game,rallies,3,",
                        "game,replayed,1,");
    }

    @Test
    void who_won_an_unsure_rally_is_never_guessed_and_the_score_has_a_range() throws IOException {
        game(",", "g,1,,earned,a1,\ng,2,,unsure,,\n");
        Commands.Ran ran = Commands.run("film", folder, "--csv");
        assertThat(ran.rows().get(0)).containsExactly("g", "a1+a2", "score", "1", "", "1.0", "2.0");
        assertThat(film(0)).contains("a1+a2,rallies_won,1,1", "game,unsure,1,");
    }

    @Test
    void missed_serves_and_returns_are_counted_where_they_are_noted() throws IOException {
        assertThat(rows("g,1,,earned,a1,\n")).noneMatch(row -> row.contains("missed"));
        assertThat(rows("g,1,,gave,a1,serve\ng,2,,earned,b1,\ng,3,,gave,a2,return\n"))
                .contains("a1,serve_missed,1,1", "a2,return_missed,1,1");
    }

    private List<String> rows(String rallies) throws IOException {
        game(",", rallies);
        return film(0);
    }

    @Test
    void a_card_that_the_rallies_do_not_give_is_a_conflict_and_the_first_rally_that_cannot_be_is_named()
            throws IOException {
        game("4,2", rallies("g", PUBLISHED));
        film(3);
        assertThat(Commands.run("film", folder, "--csv").err())
                .contains("Game g: the rallies give 4-3, the card says 4-2.", "rally 12 is the first that cannot be");
        game("4,3", rallies("g", PUBLISHED));
        film(0);
    }

    @Test
    void a_rally_after_the_end_and_a_server_who_cannot_have_served_are_conflicts() throws IOException {
        game("11,0", rallies("g", "A".repeat(12)));
        film(3);
        assertThat(Commands.run("film", folder).err())
                .contains("rally 12 is the first that cannot be right: the game was over at 11-0");
        game(",", "g,1,b1,earned,a1,\n");
        film(3);
        assertThat(Commands.run("film", folder).err())
                .contains("rally 1 is the first that cannot be right: at 0-0 it was a1 who served, not b1");
    }

    @Test
    void the_result_of_the_rubber_is_held_against_the_film_whichever_side_was_at_home() throws IOException {
        write("clubs.csv", "club,name\nA,Aa\nB,Bb\n");
        write("players.csv", "player,club,name\na1,A,a\na2,A,b\nb1,B,c\nb2,B,d\n");
        write("ties.csv", "tie,stage,pool,round,home,away\nT1,pool,P,1,B,A\n");
        write("rubbers.csv", "tie,rubber,home_1,home_2,away_1,away_2\nT1,1,b1,b2,a1,a2\n");
        write("games.csv", GAMES + "g,T1,1,side-out-11,a1,a1,a2,b1,b2,,\n");
        write("rallies.csv", RALLIES + rallies("g", "A".repeat(11)));
        write("results.csv", "tie,rubber,home,away,how\nT1,1,0,11,played\n");
        film(0);
        write("results.csv", "tie,rubber,home,away,how\nT1,1,11,0,played\n");
        film(3);
        assertThat(Commands.run("film", folder, "--csv").err())
                .contains("Game g: the rallies give 11-0, the result of its rubber says 0-11.");
    }

    @Test
    void a_folder_without_film_or_with_faults_is_refused_with_its_lines() throws IOException {
        Commands.Ran none = Commands.run("film", folder);
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err()).contains("games.csv:1: ", "rallies.csv:1: ");
        game(",", "g,1,,won,a1,\n");
        assertThat(Commands.run("film", folder).err()).contains("rallies.csv:2: ending: \"won\" is not one of");
    }
}
