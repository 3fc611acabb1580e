package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Bracket;
import tiewright.http.pieces.TieLine;

/** @param thirdPlace ties of losers, beside the bracket */
public record BracketView(
        Bracket bracket, List<TieLine> thirdPlace, boolean drawn, Optional<String> champion, StoodView stood) {}
