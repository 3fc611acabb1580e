package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.GivenFile;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;

/**
 * What a club noted from film, and the form that takes more. For that club's eyes only.
 *
 * @param kept how much there is, in a sentence
 * @param games what is kept, game by game
 * @param all deletes every game; asked for only where there is one
 * @param files what is given together
 * @param codes what the files may name, a club or the ties a line
 */
public record FilmView(
        Refusal refusal,
        List<String> cautions,
        String kept,
        List<Game> games,
        List<ActionForm> all,
        List<GivenFile> files,
        String path,
        Button give,
        List<String> codes) {
    public FilmView {
        cautions = List.copyOf(cautions);
        games = List.copyOf(games);
        all = List.copyOf(all);
        files = List.copyOf(files);
        codes = List.copyOf(codes);
    }

    /**
     * @param lines who, how many rallies, where they lead, what does not fit
     * @param goOn the way to note more of it, where there is one
     */
    public record Game(String title, List<String> lines, List<NavLink> goOn, ActionForm remove) {
        public Game {
            lines = List.copyOf(lines);
            goOn = List.copyOf(goOn);
        }
    }
}
