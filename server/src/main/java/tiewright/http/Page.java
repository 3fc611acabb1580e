package tiewright.http;

/** A page, or a few that belong together: they say at which addresses and for whom. */
interface Page {
    void at(Routes routes);
}
