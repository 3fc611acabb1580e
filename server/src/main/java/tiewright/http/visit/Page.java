package tiewright.http.visit;

/** A page, or a few that belong together: they say at which addresses and for whom. */
public interface Page {
    void at(Routes routes);
}
