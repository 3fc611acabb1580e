package tiewright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The drawn path is read back by a general reader of such codes (zxing). */
class QrCodeTest {
    private static final int PIXELS = 6;

    @Test
    void is_read_back_by_a_reader() throws NotFoundException {
        String address = "http://192.0.2.7:7070/enter/" + "x7-Q".repeat(11);
        assertThat(read(QrCode.of(address))).isEqualTo(address);
    }

    @Test
    void holds_any_script() throws NotFoundException {
        assertThat(read(QrCode.of("Seekai 3: Åse, Łukasz, 渡辺"))).isEqualTo("Seekai 3: Åse, Łukasz, 渡辺");
    }

    @Test
    void keeps_four_quiet_modules_on_each_side() {
        QrCode code = QrCode.of("a");
        assertThat(code.size()).isEqualTo(21 + 8);
        assertThat(code.path()).startsWith("M4 4h7v1h-7z");
    }

    @Test
    void refuses_what_no_code_can_hold() {
        assertThatIllegalArgumentException().isThrownBy(() -> QrCode.of("x".repeat(5000)));
        assertThatIllegalArgumentException().isThrownBy(() -> QrCode.of(""));
    }

    private static String read(QrCode code) throws NotFoundException {
        int side = code.size() * PIXELS;
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xFFFFFF);
        Matcher run = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z").matcher(code.path());
        while (run.find()) {
            int left = Integer.parseInt(run.group(1)) * PIXELS;
            int top = Integer.parseInt(run.group(2)) * PIXELS;
            for (int y = top; y < top + PIXELS; y++) {
                Arrays.fill(
                        pixels, y * side + left, y * side + left + Integer.parseInt(run.group(3)) * PIXELS, 0x000000);
            }
        }
        return new MultiFormatReader()
                .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))))
                .getText();
    }
}
