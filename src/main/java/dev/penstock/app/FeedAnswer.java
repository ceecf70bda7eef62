package dev.penstock.app;

import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineStudy;
import dev.penstock.cycles.PressureFeed;
import dev.penstock.errors.PenstockException;
import dev.penstock.reports.PageSection;
import dev.penstock.reports.PressureFeedView;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What keeps the tanks of an engine without pumps under pressure, or why that cannot be done; nothing for other engines. */
final class FeedAnswer {

    private final Optional<PressureFeedView> view;
    private final Optional<String> failure;

    private FeedAnswer(Optional<PressureFeedView> view, Optional<String> failure) {
        this.view = view;
        this.failure = failure;
    }

    /** The answer for an engine; the balance stands whatever becomes of its pressurant. */
    static FeedAnswer of(Path home, EngineBalance balance) {
        if (balance.concept().pressurization().isEmpty()) {
            return new FeedAnswer(Optional.empty(), Optional.empty());
        }
        try {
            Optional<PressureFeed> feed = EngineStudy.open(home).pressureFeed(balance);
            return new FeedAnswer(feed.map(PressureFeedView::new), Optional.empty());
        } catch (PenstockException e) {
            return new FeedAnswer(Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    void addTo(Map<String, Object> document) {
        view.ifPresent(v -> document.put("pressure_feed", v.json()));
        failure.ifPresent(why -> document.put("pressure_feed", Map.of("failure", why)));
    }

    String text() {
        String line = System.lineSeparator();
        return view.map(v -> line + v.text()).orElse("")
                + failure.map(why -> line + "no pressure feed: " + why + line).orElse("");
    }

    Optional<PageSection> section() {
        if (failure.isPresent()) {
            return Optional.of(new PageSection(
                    "pressurization",
                    "Pressurization",
                    "What pushes the propellant out?",
                    List.of("No pressure feed: " + failure.get()),
                    List.of(),
                    List.of(),
                    List.of()));
        }
        return view.map(PressureFeedView::section);
    }
}
