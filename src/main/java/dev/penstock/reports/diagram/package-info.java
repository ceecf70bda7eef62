/**
 * The flow diagram of a cycle, drawn from its own arrangement: components and stations become the nodes of a layered
 * graph, tanks above, chamber below; {@link dev.penstock.reports.diagram.FlowDiagram} is the way in.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.diagram;
