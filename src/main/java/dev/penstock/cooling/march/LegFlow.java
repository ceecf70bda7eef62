package dev.penstock.cooling.march;

/**
 * The flow through a leg, the same in all of its cells.
 *
 * @param perChannel flow of one channel (kg/s)
 * @param areaPerFlow share of the wall that the leg cools, over its flow (s/kg)
 * @param lowestPressure pressure below which the flow counts as stopped (Pa)
 */
record LegFlow(double perChannel, double areaPerFlow, double lowestPressure) {

    /**
     * @param leg leg
     * @param channels channels of the whole jacket
     * @param jacketFlow coolant flow of the whole jacket (kg/s)
     * @param lowestPressure pressure below which the flow counts as stopped (Pa)
     * @return the flow of one of its channels
     */
    static LegFlow of(Leg leg, ChannelGrid channels, double jacketFlow, double lowestPressure) {
        double flow = jacketFlow * leg.flowShare();
        return new LegFlow(flow / (channels.count * leg.channelShare()), leg.share() / flow, lowestPressure);
    }
}
