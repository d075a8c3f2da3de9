using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Pictures;
using Solidbody.Packet.Sheets;
using Solidbody.Programs;
using Solidbody.Proof;

namespace Solidbody.Packet;

/// <summary>Everything a packet is made from.</summary>
public sealed record PacketInput
{
    public required Design Design { get; init; }
    public required string ShopName { get; init; }
    /// <summary>The two files as they were read.</summary>
    public required string InstrumentText { get; init; }
    public required string ShopText { get; init; }
    public required ImmutableArray<SetUp> SetUps { get; init; }
    public required IReadOnlyDictionary<string, string> Texts { get; init; }
    public required ProofResult Proof { get; init; }
    public required ImmutableArray<Finding> Findings { get; init; }
}

/// <summary>Makes the files of a proved packet: programs, sheets, pictures, sources, index.</summary>
public static class PacketMaker
{
    /// <summary>File name → content; the same input gives the same names and, but for the sheets' font tags, the same bytes.</summary>
    public static ImmutableSortedDictionary<string, byte[]> Make(PacketInput input, IProgress<string>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(input);
        var files = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
        files.AddRange(SourcesOf(input));
        foreach (var (name, text) in input.Texts) files.Add(name, Bytes(text));
        // The PDF writer keeps fonts for the whole process: sheets are printed one after another, pictures drawn beside them.
        var pictures = Task.Run(() => Pictures(input, progress, cancel), cancel);
        foreach (var setUp in input.SetUps)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Report($"sheet {setUp.Order} of {input.SetUps.Length}");
            files.Add(PacketNames.Sheet(setUp.Order, setUp.Name), SheetPrinter.Print(SheetOf(input, setUp)));
        }
        files.AddRange(pictures.GetAwaiter().GetResult());
        files.Add(PacketFolder.Index, Bytes(PacketFile.Write(IndexOf(input))));
        return files.ToImmutable();
    }

    private static ImmutableArray<KeyValuePair<string, byte[]>> Pictures(PacketInput input, IProgress<string>? progress, CancellationToken cancel)
    {
        var jobs = new List<(string Name, Func<string> Draw)>();
        if (input.Design.Figures.Intonation is { } intonation) jobs.Add((PacketNames.Intonation, () => IntonationPicture.Svg(intonation, input.Design.Definition)));
        foreach (var part in input.Design.Parts)
        {
            jobs.Add((PacketNames.Picture(part.Name), () => PartPicture.Svg(part, input.Design.Definition.Name)));
            if (input.Proof.Proofs.FirstOrDefault(p => p.Part == part.Name) is not { } proof) continue;
            foreach (var (side, map) in new[] { (Side.Front, proof.Front), (Side.Back, proof.Back) })
                jobs.Add((PacketNames.Deviation(part.Name, side == Side.Front ? "front" : "back"),
                    () => DeviationPicture.Svg(part, side, map.Grid, map.Values, Tolerances.Gouge, LeftoverLimit(part, side))));
        }
        return
        [
            .. jobs.AsParallel().AsOrdered().WithCancellation(cancel).Select(job =>
            {
                progress?.Report(job.Name);
                return KeyValuePair.Create(job.Name, Bytes(job.Draw()));
            }),
        ];
    }

    /// <summary>What may stay on a face: on a carved one the ridges between passes too.</summary>
    private static double LeftoverLimit(Part part, Side side)
    {
        var finish = side == Side.Front ? part.FrontFinish : part.BackFinish;
        return Tolerances.Gouge + (finish == FaceFinish.AsPlaned && !part.CarvedZones.Any(z => z.From == side) ? 0 : new ProofSettings().Scallop);
    }

    private static SheetInput SheetOf(PacketInput input, SetUp setUp)
    {
        var at = input.SetUps.IndexOf(setUp);
        return new()
        {
            SetUp = setUp,
            Part = input.Design.Part(setUp.Part),
            Instrument = input.Design.Definition.Name,
            Shop = input.ShopName,
            SetUps = input.SetUps.Length,
            FacesCut = [.. input.SetUps.Take(at).Where(s => s.Part == setUp.Part).Select(s => s.Placement.Up)],
            IsLastOfBlank = !input.SetUps.Skip(at + 1).Any(s => s.Part == setUp.Part),
            LeftHanded = input.Design.Definition.Hand == Hand.Left,
            Previous = at > 0 ? input.SetUps[at - 1].Title : null,
            Next = at + 1 < input.SetUps.Length ? input.SetUps[at + 1].Title : null,
            Sheet = at + 1,
            Sheets = input.SetUps.Length,
            Overridden = [.. input.Findings.Where(f => f.OverriddenBecause is not null)],
            Proof = $"{(input.Proof.Passes ? "proved" : "not proved")}, {ContentMark(input.Texts)}",
        };
    }

    /// <summary>What the packet can be made again from: the two files, and the drawing the instrument file names.</summary>
    private static IEnumerable<KeyValuePair<string, byte[]>> SourcesOf(PacketInput input)
    {
        yield return new(PacketNames.Instrument, Bytes(input.InstrumentText));
        yield return new(PacketNames.Shop, Bytes(input.ShopText));
        if (input.Design.Definition.Body.Drawn is { } drawn) yield return new(drawn.Source.Name, drawn.Source.Content.ToArray());
    }

    private static PacketIndex IndexOf(PacketInput input) => new()
    {
        Instrument = input.Design.Definition.Name,
        Shop = input.ShopName,
        ToolVersion = typeof(PacketMaker).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0],
        Sources = SourcesOf(input).ToImmutableSortedDictionary(s => s.Key, s => Hash(s.Value), StringComparer.Ordinal),
        SetUps = input.SetUps,
        Parts = input.Proof.Parts,
        Findings = input.Findings,
    };

    /// <summary>The programs' content in three bytes: two sheets with the same mark were printed for the same programs.</summary>
    private static string ContentMark(IReadOnlyDictionary<string, string> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (name, text) in texts.OrderBy(t => t.Key, StringComparer.Ordinal))
        {
            hash.AppendData(Bytes(name));
            hash.AppendData(Bytes(text));
        }
        return string.Join(' ', hash.GetHashAndReset().Take(3).Select(b => b.ToString("x2", System.Globalization.CultureInfo.InvariantCulture)));
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
    private static string Hash(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));
}
