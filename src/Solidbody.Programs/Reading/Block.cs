namespace Solidbody.Programs.Reading;

/// <summary>The words of one line, sorted for obeying: one slot per letter, one per modal group. Used again for every line.</summary>
internal sealed class Block
{
    private readonly double[] _values = new double[26];
    private readonly int[] _columns = new int[26];
    private readonly int[] _groupWords = new int[ModalGroups.Count];
    private readonly int[] _groupColumns = new int[ModalGroups.Count];
    private uint _letters;
    private uint _groups;

    public int Line { get; private set; }
    /// <summary>Whether some of the line could not be read: then a word that seems to be missing is no mistake of its own.</summary>
    public bool IsBroken { get; set; }
    public bool IsEmpty => (_letters | _groups) == 0;

    public void Begin(int line)
    {
        Line = line;
        _letters = 0;
        _groups = 0;
        IsBroken = false;
    }

    public bool Has(char letter) => (_letters & Bit(letter)) != 0;
    public double this[char letter] => _values[letter - 'A'];
    public int Column(char letter) => _columns[letter - 'A'];

    /// <summary>Keeps a letter's number; false when the line has that letter already.</summary>
    public bool Put(char letter, double value, int column)
    {
        if (Has(letter)) return false;
        _letters |= Bit(letter);
        _values[letter - 'A'] = value;
        _columns[letter - 'A'] = column;
        return true;
    }

    public bool Has(ModalGroup group) => (_groups & (1u << (int)group)) != 0;
    /// <summary>The whole number of the G or M word of a group.</summary>
    public int this[ModalGroup group] => _groupWords[(int)group];
    public int Column(ModalGroup group) => _groupColumns[(int)group];

    /// <summary>Keeps a G or M word; false when the line has one of its group already.</summary>
    public bool Put(ModalGroup group, int word, int column)
    {
        if (Has(group)) return false;
        _groups |= 1u << (int)group;
        _groupWords[(int)group] = word;
        _groupColumns[(int)group] = column;
        return true;
    }

    private static uint Bit(char letter) => 1u << (letter - 'A');
}
