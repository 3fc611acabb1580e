package tiewright.http.organiser;

import java.util.List;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages of the organiser, from an empty event to its deletion. */
public final class OrganiserRoom implements Room {
    @Override
    public List<Page> pages() {
        return List.of(
                new OrganiserPage(),
                new EventPage(),
                new SettingsPage(),
                new CourtsPage(),
                new EntriesPage(),
                new PastePage(),
                new SquadPage(),
                new OpeningPage(),
                new DrawPage(),
                new KnockoutPage(),
                new DryRunPage(),
                new LinksPage(),
                new EnvelopesPage(),
                new SafetyInfoPage(),
                new BackupPage(),
                new KeepPage(),
                new PrivateDataPage());
    }
}
