package tiewright.setup;

/**
 * Why a ruling was given, and by whom.
 *
 * @param by the name of the person who answers for it
 */
public record SignedReason(String reason, String by) {}
