package tiewright.http.views;

import java.util.List;

/** What each club of a pool that is not finished can still reach. */
public record NeedsView(List<Pool> pools) {
    public record Pool(String name, List<Club> clubs) {}

    /** @param overall over everything that can still happen */
    public record Club(String name, String overall, List<String> cases) {}
}
