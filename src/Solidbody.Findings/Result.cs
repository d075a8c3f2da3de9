using System.Collections.Immutable;

namespace Solidbody.Findings;

/// <summary>What reading a person's file gives: the value, or every mistake in it at once; never both.</summary>
public sealed record Result<T>(T? Value, ImmutableArray<Mistake> Mistakes) where T : class
{
    public bool IsGood => Mistakes.IsEmpty;
    /// <summary>The value; only to be asked for when <see cref="IsGood"/>.</summary>
    public T Good => Value ?? throw new InvalidOperationException($"There is no value, but {Mistakes.Length} mistakes.");
}
