package dev.penstock.cycles.origin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers of stations in the order of the flow: along the oxidizer, then along the fuel, then along burnt gas. Where a line
 * divides, the larger part is followed to its end first; what is brought together is numbered behind all that flows into it.
 */
public final class StationOrder {

    /**
     * A way out of a part.
     *
     * @param laid number in the order in which an arrangement is laid out, from 1
     * @param content what flows
     * @param flow how much (kg/s)
     */
    public record Outlet(int laid, Content content, double flow) {}

    /**
     * A part that joins stations.
     *
     * @param inlets numbers as laid out of what flows in
     * @param outlets what flows out
     */
    public record Part(List<Integer> inlets, List<Outlet> outlets) {

        public Part {
            inlets = List.copyOf(inlets);
            outlets = outlets.stream()
                    .sorted(Comparator.comparingDouble(Outlet::flow).reversed())
                    .toList();
        }
    }

    private final Map<Integer, Integer> numbers = new HashMap<>();

    private StationOrder() {}

    /** @return the order in which an arrangement is laid out */
    public static StationOrder asLaid() {
        return new StationOrder();
    }

    /**
     * @param parts parts of an arrangement as laid out
     * @return its stations in the order of the flow
     */
    public static StationOrder along(List<Part> parts) {
        StationOrder order = new StationOrder();
        int before;
        do {
            before = order.numbers.size();
            for (Content content : Content.values()) {
                parts.forEach(part -> order.follow(part, content, parts));
            }
        } while (order.numbers.size() > before);
        return order;
    }

    /**
     * @param laid number as laid out
     * @return number in this order
     */
    public int of(int laid) {
        return numbers.getOrDefault(laid, laid);
    }

    private void follow(Part part, Content content, List<Part> parts) {
        if (!numbers.keySet().containsAll(part.inlets())) {
            return;
        }
        List<Outlet> open = new ArrayList<>(part.outlets());
        open.removeIf(outlet -> outlet.content() != content || numbers.containsKey(outlet.laid()));
        for (Outlet outlet : open) {
            numbers.put(outlet.laid(), numbers.size() + 1);
            parts.stream()
                    .filter(next -> next.inlets().contains(outlet.laid()))
                    .forEach(next -> follow(next, content, parts));
        }
    }
}
