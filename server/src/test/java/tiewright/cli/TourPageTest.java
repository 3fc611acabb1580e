package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The tour shows a picture of each of its stops, and all of them together are small enough to carry. */
class TourPageTest {
    private static final int MOST_BYTES = 1_500_000;

    @Test
    void each_stop_has_its_picture_and_all_of_them_are_small() throws IOException {
        String tour = Files.readString(TourIT.DOCS.resolve("tour.md"));
        for (TourIT.Stop stop : TourIT.STOPS) {
            assertThat(tour).contains("(pictures/" + stop.picture() + ".png)");
            assertThat(ImageIO.read(TourIT.picture(stop).toFile()).getWidth()).isEqualTo(stop.laptop() ? 1280 : 390);
        }
        try (Stream<Path> all = Files.list(TourIT.DOCS.resolve("pictures"))) {
            List<Path> pictures = all.toList();
            assertThat(pictures).as("pictures that the tour does not show").hasSize(TourIT.STOPS.size());
            assertThat(pictures.stream()
                            .mapToLong(file -> file.toFile().length())
                            .sum())
                    .isLessThan(MOST_BYTES);
        }
    }
}
