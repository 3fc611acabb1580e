package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Notes.captain;
import static tiewright.event.Notes.kept;
import static tiewright.event.Notes.nothing;
import static tiewright.event.Notes.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PlayerForgotten;

class ForgetPlayerTest {
    private static final Event DAY = Days.oneTie().event();
    private static final PlayerId N1 = PlayerId.of("N1");

    @Test
    void the_own_captain_deletes_what_was_noted_about_an_own_player() {
        ForgetPlayer forget = new ForgetPlayer(N1, List.of("g1"));
        assertThat(kept(forget.decide(DAY, nothing("N"), captain("N"))))
                .containsExactly(new PlayerForgotten(ClubId.of("N"), N1, List.of("g1")));
        assertThat(refused(forget.decide(DAY, nothing("S"), captain("S")))).containsExactly("notes.not-own-player");
        assertThat(refused(forget.decide(DAY, nothing("N"), Days.organiser()))).containsExactly("notes.captain-only");
        assertThat(forget.isNeverStale()).isTrue();
    }
}
