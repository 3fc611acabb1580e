package tiewright.conditions;
public enum Preset { CLUB_DAY, STRICT_ORDER, EVERYONE_PLAYS, TIMED }
