package tiewright.event;

/** What a captain wishes of two players: in one rubber, or never. */
public enum PairWish {
    TOGETHER,
    APART
}
