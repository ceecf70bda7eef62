package dev.penstock.claims.picture;

/** Which way a nozzle's exit faces in a picture. A tilt alone does not tell: the ellipse of its rim is the same both ways. */
public enum Facing {
    /** Nobody can tell: the throat may be nearer than the exit, or farther. */
    UNKNOWN(0),
    /** One sees into the nozzle: the throat is farther away than the exit. */
    TOWARDS(1),
    /** One sees its outside only: the throat is nearer than the exit. */
    AWAY(-1);

    private final int sign;

    Facing(int sign) {
        this.sign = sign;
    }

    /** @return +1 where the throat is farther than the exit, −1 where it is nearer, 0 where nobody can tell */
    int sign() {
        return sign;
    }
}
