package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Notes.captain;
import static tiewright.event.Notes.kept;
import static tiewright.event.Notes.nothing;
import static tiewright.event.Notes.refused;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.Role;

class MarkHurtTest {
    private static final Event DAY = Days.oneTie().event();
    private static final MarkHurt N1 = new MarkHurt(PlayerId.of("N1"), true);

    @Test
    void officials_and_the_own_captain_mark_and_nobody_else() {
        for (Actor by : new Actor[] {captain("N"), Days.desk(), Days.organiser(), Actor.of(Role.REFEREE, "r")}) {
            assertThat(kept(N1.decide(DAY, nothing("N"), by))).containsExactly(new HurtMarked(PlayerId.of("N1"), true));
        }
        Actor player = new Actor(Role.PLAYER, Optional.of(ClubId.of("N")), "player", "");
        for (Actor by : new Actor[] {captain("S"), player, Actor.of(Role.VOLUNTEER, "v")}) {
            assertThat(refused(N1.decide(DAY, nothing("N"), by))).containsExactly("notes.captain-only");
        }
        assertThat(refused(N1.decide(DAY, nothing("S"), Days.desk()))).containsExactly("notes.not-own-player");
        assertThat(N1.isNeverStale()).isTrue();
    }
}
