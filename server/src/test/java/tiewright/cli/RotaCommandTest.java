package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The practice rota as a command. */
class RotaCommandTest {
    @TempDir
    Path folder;

    private Commands.Ran rota(int players, String... more) throws IOException {
        Files.writeString(
                folder.resolve("event.csv"),
                "key,value\nname,Practice\ndate,2031-05-10\nvenue,Hall\ntime_zone,Europe/Vilnius\nstarts,09:00\n");
        Files.writeString(folder.resolve("conditions.csv"), "setting,value\npreset,Club day\n");
        Files.writeString(folder.resolve("clubs.csv"), "club,name\nA,Aa\nB,Bb\n");
        StringBuilder rows = new StringBuilder("player,club,name,present\nb1,B,b,\nax,A,away,no\n");
        for (int i = 1; i <= players; i++) {
            rows.append("a").append(i).append(",A,n,\n");
        }
        Files.writeString(folder.resolve("players.csv"), rows);
        return more.length > 0
                ? Commands.run("rota", folder, "--club", more[0])
                : Commands.run("rota", folder, "--club", "A", "--csv");
    }

    @Test
    void eight_who_are_present_get_seven_rounds_on_two_courts() throws IOException {
        Commands.Ran ran = rota(8);
        assertThat(ran.status()).isZero();
        assertThat(ran.csv().get(0)).containsExactly("round", "court", "player_1", "player_2", "player_3", "player_4");
        assertThat(ran.rows())
                .hasSize(14)
                .allSatisfy(row ->
                        assertThat(row.subList(2, 6)).doesNotHaveDuplicates().doesNotContain("ax", "b1"));
        assertThat(ran.rows().stream().map(row -> row.subList(0, 2)))
                .startsWith(List.of("1", "1"), List.of("1", "2"), List.of("2", "1"));
        assertThat(rota(8, "A").err())
                .contains("Each of the 28 pairs plays once; any two players are opponents twice.");
    }

    @Test
    void a_number_that_cannot_be_mixed_evenly_says_so() throws IOException {
        assertThat(rota(7).rows()).hasSizeBetween(11, 13);
        assertThat(rota(7, "A").err()).contains("7 players cannot all be mixed evenly: each of the 21 pairs plays");
    }

    @Test
    void too_few_too_many_and_nobody_are_said() throws IOException {
        Commands.Ran few = rota(3);
        assertThat(few.status()).isEqualTo(4);
        assertThat(few.err()).contains("A rota takes 4 to 17 players, and 3 of A are present.");
        assertThat(rota(18).status()).isEqualTo(4);
        Commands.Ran nobody = rota(8, "Z");
        assertThat(nobody.status()).isEqualTo(2);
        assertThat(nobody.err()).contains("players.csv has nobody present for the club Z.");
    }
}
