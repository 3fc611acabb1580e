package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.NavLink;

/** The organiser's own page: how far the set-up is, what to do next, where everything is done. */
public record OrganiserView(DoNext steps, DoNext next, List<NavLink> places, List<String> cautions) {}
