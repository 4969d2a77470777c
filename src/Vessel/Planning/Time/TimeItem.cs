using Vessel.Design;

namespace Vessel.Planning;

/// <summary>One operation of one task, timed; minutes.</summary>
/// <param name="Task">Task as in the order; <c>set-up</c> for what is done once.</param>
/// <param name="Step">Which of a weld's steps it belongs to.</param>
/// <param name="Operation">Name of the operation in the rates: <c>drill</c>.</param>
/// <param name="Quantity">How many, or mm, by hand.</param>
/// <param name="Hand">Minutes with parts cut by hand; null where that way does not do it.</param>
/// <param name="Laser">Minutes with parts cut by laser; null where that way does not do it.</param>
public sealed record TimeItem(
    string Task, StepKind Step, string Operation, double Quantity, Estimate? Hand, Estimate? Laser, string Basis);
