package tiewright.paper;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;

/**
 * A text as a QR code (ISO/IEC 18004), to be drawn as one SVG path of black modules.
 *
 * @param size modules along one side, the quiet zone of four on each side included
 * @param path the {@code d} of an SVG path in module units
 */
public record QrCode(int size, String path) {
    private static final int QUIET_ZONE = 4;

    /** @throws IllegalArgumentException if the text is empty or too long for a code */
    public static QrCode of(String text) {
        ByteMatrix modules = modules(text);
        StringBuilder path = new StringBuilder();
        for (int row = 0; row < modules.getHeight(); row++) {
            addRow(modules, row, path);
        }
        return new QrCode(modules.getWidth() + 2 * QUIET_ZONE, path.toString());
    }

    /** One rectangle for each run of black modules. */
    private static void addRow(ByteMatrix modules, int row, StringBuilder path) {
        int column = 0;
        while (column < modules.getWidth()) {
            int run = 0;
            while (column + run < modules.getWidth() && modules.get(column + run, row) == 1) {
                run++;
            }
            if (run > 0) {
                path.append('M')
                        .append(column + QUIET_ZONE)
                        .append(' ')
                        .append(row + QUIET_ZONE)
                        .append('h')
                        .append(run)
                        .append("v1h-")
                        .append(run)
                        .append('z');
            }
            column += run + 1;
        }
    }

    private static ByteMatrix modules(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("no code is made of an empty text");
        }
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no QR code holds this text", tooLong);
        }
    }
}
