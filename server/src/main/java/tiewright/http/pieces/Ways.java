package tiewright.http.pieces;

import java.util.List;
import java.util.Optional;

/**
 * The ways from a page: four places under the thumb, always the same for a role, and all other pages one tap below them.
 *
 * @param often pages of the places that a laptop's line has room for
 * @param due the deadline of the reader that comes first; it stands with the first place
 */
public record Ways(List<Place> places, List<NavLink> often, Optional<Countdown> due) {

    /**
     * A place, and what belongs to it.
     *
     * @param here the page shown belongs to it
     */
    public record Place(NavLink link, boolean here, List<NavLink> pages) {
        public Place {
            pages = List.copyOf(pages);
        }
    }

    public Ways {
        places = List.copyOf(places);
        often = List.copyOf(often);
    }
}
