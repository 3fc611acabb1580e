package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.TieLine;

/** The ties whose cards can be entered, and those that are finished. */
public record CardsView(List<TieLine> open, List<TieLine> finished) {}
