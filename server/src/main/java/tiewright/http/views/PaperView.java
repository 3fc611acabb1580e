package tiewright.http.views;

import java.util.List;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.SheetView;

/** Sheets (two to an A4 page) or cards (four), to print. */
public record PaperView(String words, List<SheetView> sheets, List<CardView> cards) {}
