package tiewright.http.views;

import java.util.Optional;
import tiewright.http.pieces.Bracket;

/** The knockout, with the champion once there is one. */
public record BracketView(Bracket bracket, boolean drawn, Optional<String> champion, StoodView stood) {}
