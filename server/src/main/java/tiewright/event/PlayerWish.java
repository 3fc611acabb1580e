package tiewright.event;

/** What a captain wishes of one player in one tie. */
public enum PlayerWish {
    PLAY,
    REST
}
