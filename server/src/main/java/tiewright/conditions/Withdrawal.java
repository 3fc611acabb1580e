package tiewright.conditions;
public enum Withdrawal { ANNUL, KEEP, AWARD }
