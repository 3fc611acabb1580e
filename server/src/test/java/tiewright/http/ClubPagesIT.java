package tiewright.http;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Role;

/** Every page of a captain's and a player's. */
class ClubPagesIT extends EachPage {
    private static final List<String> CAPTAIN = List.of(
            "/captain",
            "/captain/squad",
            "/captain/film",
            "/captain/film/note",
            "/captain/film/counts",
            "/captain/film/agreement",
            "/captain/film/find?ending=gave",
            "/captain/rota",
            "/captain/film/note?tie=A-1-1&rubber=1",
            "/captain/past",
            "/captain/playing-time",
            "/captain/sheet/A-3-2",
            "/captain/sheet/A-3-2?from=last",
            "/captain/proposal/A-3-2",
            "/captain/decider/A-2-2",
            "/cards/A-2-2",
            "/cards/A-2-2/D",
            "/tables");

    @Test
    void every_page_of_a_captain() {
        in(Role.CAPTAIN, Optional.of("KS"), Optional.empty(), CAPTAIN);
    }

    @Test
    void every_page_of_a_player() {
        in(Role.PLAYER, Optional.of("KS"), Optional.of("KS1"), List.of("/player/KS1", "/player/KS1/court", "/"));
    }
}
