using Solidbody.App.Terminal;

namespace Solidbody.App.Tests.Commands;

/// <summary>A command as a person types it, and everything that came back.</summary>
internal sealed record Terminal(int Exit, string Output, string Errors)
{
    public static Task<Terminal> Type(params string[] words) => Type(words, null, TestContext.Current.CancellationToken);

    public static async Task<Terminal> Type(string[] words, int? width, CancellationToken cancel)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exit = await CommandLine.Run(words, new Screen(output, width), errors, cancel);
        return new(exit, output.ToString(), errors.ToString());
    }

    /// <summary>Ended as it should, without a trace of the machinery.</summary>
    public Terminal Ends(int exit)
    {
        Assert.True(Exit == exit, $"exit {Exit}, not {exit}\n{Output}\n{Errors}");
        Assert.DoesNotContain("   at Solidbody.", Output + Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", Output + Errors, StringComparison.Ordinal);
        return this;
    }
}
