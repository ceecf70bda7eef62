package dev.penstock.reports.concept;

import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.questions.PressureFeed;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.FeedFigures;
import dev.penstock.errors.PenstockException;
import dev.penstock.provenance.Trail;
import dev.penstock.reports.engine.PressureFeedView;
import dev.penstock.reports.page.PageSection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** What keeps the tanks of an engine without pumps under pressure, or why that cannot be done; nothing for other engines. */
public final class FeedAnswer {

    private final Optional<PressureFeed> feed;
    private final Optional<String> failure;

    private FeedAnswer(Optional<PressureFeed> feed, Optional<String> failure) {
        this.feed = feed;
        this.failure = failure;
    }

    /**
     * The answer for an engine; the balance stands whatever becomes of its pressurant.
     *
     * @param study where a study is to be had; asked only for an engine without pumps
     * @param balance balanced engine
     * @return what keeps its tanks under pressure
     */
    public static FeedAnswer of(Supplier<EngineStudy> study, EngineBalance balance) {
        if (balance.concept().pressurization().isEmpty()) {
            return new FeedAnswer(Optional.empty(), Optional.empty());
        }
        try {
            return new FeedAnswer(study.get().pressureFeed(balance), Optional.empty());
        } catch (PenstockException e) {
            return new FeedAnswer(Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    /** @param document JSON document of the balance, which gets this answer too */
    public void addTo(Map<String, Object> document) {
        feed.ifPresent(f -> document.put("pressure_feed", new PressureFeedView(f).json()));
        failure.ifPresent(why -> document.put("pressure_feed", Map.of("failure", why)));
    }

    /** @return tables for a terminal; empty text if there is nothing to say */
    public String text() {
        String line = System.lineSeparator();
        return feed.map(f -> line + new PressureFeedView(f).text()).orElse("")
                + failure.map(why -> line + "no pressure feed: " + why + line).orElse("");
    }

    /** @param page page of the engine, which gets this answer too */
    public void addTo(ConceptPage page) {
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

    /**
     * @param trail trail of the balance, which gets the numbers of this answer too
     * @param balance the balance
     */
    public void addTo(Trail trail, EngineBalance balance) {
        feed.ifPresent(f -> FeedFigures.record(balance, f, trail));
    }
}
