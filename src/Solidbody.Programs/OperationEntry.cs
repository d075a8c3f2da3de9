namespace Solidbody.Programs;

/// <summary>One operation of a program: what it does, where in the text it begins, and how long it takes.</summary>
/// <param name="Name">For people: <c>neck pocket, walls</c>.</param>
/// <param name="Line">First line of the program text that belongs to it, from 1; it ends where the next begins.</param>
/// <param name="Seconds">Running time by the motion model. A program's operations and its spindle's dwell make up its time.</param>
/// <param name="BoundSeconds">What no path could do better with this cutter, its feed and the limits it is held to; at most <paramref name="Seconds"/>.</param>
public sealed record OperationEntry(string Name, int Line, double Seconds, double BoundSeconds);
