/**
 * How large is what a picture shows? Begin with {@link dev.penstock.claims.picture.PictureMeasurement}: marks on a picture and a
 * known length in, lengths with their errors out.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.claims.picture;
