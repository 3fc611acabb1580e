package tiewright.conditions;
public enum DeciderKind { NONE, ANY_TWO, ONE_FROM_EACH, SINGLES_TURNS }
