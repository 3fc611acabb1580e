package tiewright.standings;

/** What one side of a tie takes from it. */
record SideCount(int tiePoints, int tiesWon, int rubbers, int games, int points) {
    int of(Quantity quantity) {
        return switch (quantity) {
            case TIE_POINTS -> tiePoints;
            case TIES_WON -> tiesWon;
            case RUBBERS -> rubbers;
            case GAMES -> games;
            case POINTS -> points;
        };
    }
}
