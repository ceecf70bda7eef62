package dev.penstock.cooling.design;

import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.errors.Require;

/**
 * How channels are shaped but for their heights, which follow from the wall they have to cool. Between the usual and the tightest
 * shape the pressure drop decides.
 *
 * @param usual shape where the pressure drop leaves the choice
 * @param tightest shape where it does not
 * @param wallMargin margin kept to the wall limits where the pressure drop allows it, as a fraction of them (-)
 */
public record ChannelRule(Shape usual, Shape tightest, double wallMargin) {

    /**
     * The shape of a channel.
     *
     * @param pitch circumference at the throat's channel floor per channel (m)
     * @param widthShare channel width over pitch (-); tubes take the pitch less their walls
     * @param slenderness largest height over width (-)
     */
    public record Shape(double pitch, double widthShare, double slenderness) {

        public Shape {
            Require.positive("channel rule", "pitch (m)", pitch);
            Require.within("channel rule", "width over pitch (-)", widthShare, 0.05, 0.95);
            Require.within("channel rule", "height over width (-)", slenderness, 1, 1e4);
        }

        /** The same with another largest height over width. */
        public Shape slender(double newSlenderness) {
            return new Shape(pitch, widthShare, newSlenderness);
        }

        /** A share of the way to another shape. */
        public Shape towards(Shape other, double share) {
            return new Shape(
                    pitch + share * (other.pitch - pitch),
                    widthShare + share * (other.widthShare - widthShare),
                    slenderness + share * (other.slenderness - slenderness));
        }
    }

    private static final double REFERENCE_PITCH = 2e-3;
    private static final double REFERENCE_DIAMETER = 0.25;
    private static final double SMALLEST_PITCH = 1.2e-3;
    private static final double LARGEST_PITCH = 6e-3;
    private static final double FINE_SHARE = 0.7;
    private static final double FLATTENED = 3;
    private static final double MOST_FLATTENED = 10;
    private static final double SMALLEST_FINE_PITCH = 1.1e-3;

    public ChannelRule {
        Require.within("channel rule", "wall margin (-)", wallMargin, 0, 0.5);
    }

    /** The rule for a first estimate; tubes have one pitch, since their walls take the more of it the finer it is. */
    public static ChannelRule of(JacketCase question) {
        double wanted = REFERENCE_PITCH * Math.sqrt(2 * question.narrowestRadius() / REFERENCE_DIAMETER);
        double pitch = Math.min(LARGEST_PITCH, Math.max(SMALLEST_PITCH, wanted));
        boolean tubes = question.design().channels().kind() == ChannelKind.TUBE;
        double fine = tubes ? pitch : Math.max(SMALLEST_FINE_PITCH, FINE_SHARE * pitch);
        return new ChannelRule(
                new Shape(pitch, 0.5, tubes ? FLATTENED : 10), new Shape(fine, 0.6, tubes ? MOST_FLATTENED : 14), 0.07);
    }
}
