package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tiewright.conditions.LevelSteps;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;

/** The conditions and the table must read {@code level_teams} alike, though neither room imports the other's grammar. */
class LevelStepsTest {
    @Test
    void reads_every_step_and_refuses_every_other_word_as_the_table_does() {
        TreeSet<String> words = new TreeSet<>(LevelSteps.steps());
        words.addAll(LevelSteps.NAMED);
        words.addAll(List.of("", "toss", "lots-among", "restart-among", "ties-won", "ties-difference-among", "points"));
        for (String quantity : List.of("rubbers", "games", "points", "ties", "tie-points")) {
            for (String form : List.of("won", "lost", "difference", "ratio")) {
                words.addAll(List.of(quantity + "-" + form, quantity + "-" + form + "-among"));
            }
        }
        for (String word : words) {
            same(word);
            same(word + ">lots");
            same("restart>" + word);
            same(word + ">");
        }
    }

    private static void same(String levelTeams) {
        assertThat(SettingFault.in(Setting.LEVEL_TEAMS, levelTeams).isEmpty())
                .as(levelTeams)
                .isEqualTo(Procedure.parse(levelTeams).isPresent());
    }
}
