package tiewright.http.views;

import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;

/** How often each player of a squad was named on the opened sheets. */
public record PlayingTimeView(ReasonTable table, CopyText copy) {}
