package dev.penstock.app;

import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineStudy;
import dev.penstock.cycles.PressureFeed;
import dev.penstock.cycles.PressureFeedTrail;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.Trail;
import dev.penstock.reports.ConceptPage;
import dev.penstock.reports.PageSection;
import dev.penstock.reports.PressureFeedView;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What keeps the tanks of an engine without pumps under pressure, or why that cannot be done; nothing for other engines. */
final class FeedAnswer {

    private final Optional<PressureFeed> feed;
    private final Optional<String> failure;

    private FeedAnswer(Optional<PressureFeed> feed, Optional<String> failure) {
        this.feed = feed;
        this.failure = failure;
    }

    /** The answer for an engine; the balance stands whatever becomes of its pressurant. */
    static FeedAnswer of(Path home, EngineBalance balance) {
        if (balance.concept().pressurization().isEmpty()) {
            return new FeedAnswer(Optional.empty(), Optional.empty());
        }
        try {
            return new FeedAnswer(EngineStudy.open(home).pressureFeed(balance), Optional.empty());
        } catch (PenstockException e) {
            return new FeedAnswer(Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    void addTo(Map<String, Object> document) {
        feed.ifPresent(f -> document.put("pressure_feed", new PressureFeedView(f).json()));
        failure.ifPresent(why -> document.put("pressure_feed", Map.of("failure", why)));
    }

    String text() {
        String line = System.lineSeparator();
        return feed.map(f -> line + new PressureFeedView(f).text()).orElse("")
                + failure.map(why -> line + "no pressure feed: " + why + line).orElse("");
    }

    void addTo(ConceptPage page) {
        feed.ifPresent(page::fedBy);
        failure.ifPresent(why -> page.with(new PageSection(
                "pressurization",
                "Pressurization",
                "What pushes the propellant out?",
                List.of("No pressure feed: " + why),
                List.of(),
                List.of(),
                List.of())));
    }

    void addTo(Trail trail, EngineBalance balance) {
        feed.ifPresent(f -> PressureFeedTrail.extend(trail, balance, f));
    }
}
