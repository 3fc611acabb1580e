package tiewright.http.rulings;

import java.util.List;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages on which officials decide, and put right. */
public final class RulingsRoom implements Room {
    @Override
    public List<Page> pages() {
        return List.of(
                new RulingsPage(),
                new CorrectionPage(),
                new GoesHomePage(),
                new WithdrawalPage(),
                new CasesPage(),
                new ProtestsPage(),
                new PostNoticePage(),
                new SigningPage());
    }
}
