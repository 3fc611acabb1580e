package tiewright.http.film;

import java.util.List;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages on which a captain keeps notes of film and of earlier games. */
public final class FilmRoom implements Room {
    @Override
    public List<Page> pages() {
        return List.of(
                new FilmPage(),
                new NotingPage(),
                new FilmCountsPage(),
                new ClipsPage(),
                new AgreementPage(),
                new RotaPage(),
                new PastPage());
    }
}
