package tiewright.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import tiewright.event.Actor;
import tiewright.event.Recorded;

/**
 * What facts add up to, one after the other (SHA-256 over the sum before and the next fact): with a fact changed, missing or moved it is
 * another. It finds what a disk damaged; whoever means to deceive can reckon it as well.
 *
 * @param facts how many
 * @param hex 64 digits
 */
record FactSum(long facts, String hex) {
    static final FactSum NONE = new FactSum(0, "0".repeat(64));

    FactSum then(Recorded next) {
        StringBuilder text = new StringBuilder(hex);
        Actor by = next.by();
        text.append(next.seq()).append(' ').append(next.fact().kind().code()).append(' ');
        text.append(by.role().code())
                .append('\n')
                .append(by.name())
                .append('\n')
                .append(by.device());
        by.club().ifPresent(club -> text.append("\nclub ").append(club.code()));
        by.link().ifPresent(link -> text.append("\nlink ").append(link));
        next.deviceTime().ifPresent(at -> text.append("\nthere ").append(at.toEpochMilli()));
        text.append("\nhere ").append(next.receivedAt().toEpochMilli());
        FactRows.columns(next.fact())
                .forEach((column, value) ->
                        text.append('\n').append(column.getName()).append('=').append(value));
        return new FactSum(facts + 1, hash(text.toString()));
    }

    private static String hash(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
