package courseworthy.build;

/**
 * From the head tube to the hands, by plane trigonometry. Lengths in m, angles in degrees.
 *
 * <p>The steerer leans back from the vertical: from the top of the head tube, which is {@code reach} in front of and {@code stack}
 * above the bottom bracket, one goes along it backwards and up, in a direction that rises by 180 less the head angle from straight
 * ahead. Its square, to the front, rises by 90 less the head angle. A stem's angle is counted from that square, rising is positive,
 * so that the stem rises by {@code 90 - head angle + stem angle}: a stem of -17 degrees is level at a head angle of 73 degrees. A stem
 * that is turned over has the opposite angle. It leaves the steerer at the middle of its clamp. From the middle of the bar's clamp the
 * hands are the bar's reach ahead (negative where a bar sweeps back) and its rise above (negative where it drops).
 *
 * @param reach     of the frame, level
 * @param stack     of the frame, upright
 * @param headAngle of the steerer to the ground, as the bike stands
 * @param under     along the steerer, from where stack and reach are stated to the lower edge of the stem's clamp
 * @param clamp     height of the stem's clamp
 * @param stem      length of the stem
 * @param stemAngle against the square of the steerer
 * @param barReach  clamp to hands, level
 * @param barRise   clamp to hands, upright
 */
record CockpitGeometry(double reach, double stack, double headAngle, double under, double clamp, double stem, double stemAngle, double barReach,
        double barRise) {

    /** Where the stem holds the bar. */
    Point bar() {
        return new Point(reach, stack).step(under + clamp / 2, 180 - headAngle).step(stem, 90 - headAngle + stemAngle);
    }

    /** Where the hands lie: on the hoods of a drop bar, on the grips of another. */
    Point hands() {
        return bar().plus(barReach, barRise);
    }

    /** With other spacers, m more or fewer under the stem, and another stem. */
    CockpitGeometry with(double newUnder, double newClamp, double newStem, double newAngle) {
        return new CockpitGeometry(reach, stack, headAngle, newUnder, newClamp, newStem, newAngle, barReach, barRise);
    }
}
