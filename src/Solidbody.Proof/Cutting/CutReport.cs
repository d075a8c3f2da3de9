namespace Solidbody.Proof.Cutting;

/// <summary>What may reach into wood that it must not touch, while a program runs.</summary>
internal enum Contact
{
    /// <summary>A rapid goes through wood.</summary>
    Rapid,
    /// <summary>Wood is taken above the cutting edges.</summary>
    AboveFlutes,
    /// <summary>A shank thicker than the cutter meets wood.</summary>
    Shank,
    /// <summary>A shank no thicker than the cutter runs beside wood.</summary>
    BesideShank,
    /// <summary>A cutter that does not cut to its middle is pushed straight down into wood.</summary>
    Middle,
    /// <summary>The collet's face meets wood.</summary>
    Collet,
}

/// <summary>How deep something reached into wood, over which column and in which line of the program; 0 for not at all.</summary>
internal readonly record struct Reach(float Depth, int Index, int Line)
{
    public Reach Or(Reach other) => other.Depth > Depth ? other : this;
}

/// <summary>The deepest reach of each kind in one program.</summary>
internal sealed class CutReport
{
    private readonly Reach[] reaches = new Reach[Enum.GetValues<Contact>().Length];
    public Reach this[Contact contact] => reaches[(int)contact];
    public void Note(Contact contact, Reach reach) => reaches[(int)contact] = reaches[(int)contact].Or(reach);
    public void Note(CutReport other)
    {
        for (var i = 0; i < reaches.Length; i++) reaches[i] = reaches[i].Or(other.reaches[i]);
    }
}
