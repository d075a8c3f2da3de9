using Solidbody.Materials;

namespace Solidbody.Instrument;

/// <summary>A wood as the person knows their own boards: it stands before the table's wood of the same key.</summary>
/// <param name="Wood">Every figure: the person's where given, the table's else.</param>
/// <param name="Price">For a cubic metre of rough board, in the person's money; null when not given.</param>
public sealed record OwnWood(Wood Wood, double? Price = null);
