package tiewright.conditions;
public enum StopWhenDecided { NONE, KNOCKOUT, ALL }
