namespace Solidbody.Instrument;

/// <summary>The front falls away under the player's arm.</summary>
/// <param name="X">A point on the middle of the bend, from the nut.</param>
/// <param name="Y">From the centre line.</param>
/// <param name="Direction">The way it falls, radians from +x, right-handed seen from the front.</param>
/// <param name="Angle">Of the slope below the front, radians.</param>
/// <param name="HalfBlend">Half the length of the bend.</param>
/// <param name="BendRadius">Radius of the bend's line in the plan, bulging the way it falls; 0 is straight.</param>
public sealed record ArmContourDefinition(double X, double Y, double Direction, double Angle, double HalfBlend, double BendRadius);

/// <summary>The back is hollowed for the player's body.</summary>
/// <param name="WindowHalf">Half the width that keeps the full depth.</param>
/// <param name="WindowBlend">Over which it runs out to both sides of that.</param>
public sealed record BellyContourDefinition(double X, double Y, double Direction, double Angle, double HalfBlend, double WindowHalf, double WindowBlend);
