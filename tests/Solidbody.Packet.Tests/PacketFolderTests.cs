using System.Text;

namespace Solidbody.Packet.Tests;

public sealed class PacketFolderTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("solidbody-packet-").FullName;
    private string Place => Path.Combine(root, "out");

    public void Dispose() => Directory.Delete(root, recursive: true);

    private static Dictionary<string, byte[]> Packet(string program) => new()
    {
        ["packet.json"] = Encoding.UTF8.GetBytes("{}"),
        ["programs/01-a.nc"] = Encoding.UTF8.GetBytes(program),
    };

    private string Read(string name) => File.ReadAllText(Path.Combine(Place, name));

    private void Write(string program) => Assert.Null(PacketFolder.Write(Place, Packet(program)));

    [Fact]
    public void A_packet_is_written_whole_and_nothing_is_left_beside_it()
    {
        Write("G0");
        Assert.Equal("G0", Read("programs/01-a.nc"));
        Assert.Equal([Place], Directory.GetFileSystemEntries(root));
    }

    [Fact]
    public void The_sums_are_sha256()
    {
        Write("abc");
        // FIPS 180-4 example: SHA-256 of “abc”.
        Assert.Contains("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  programs/01-a.nc", Read(PacketFolder.Sums), StringComparison.Ordinal);
    }

    [Fact]
    public void An_untouched_older_packet_is_replaced_whole()
    {
        Assert.Null(PacketFolder.Write(Place, new Dictionary<string, byte[]>(Packet("G0")) { ["old.txt"] = [1] }));
        Write("G1");
        Assert.Equal("G1", Read("programs/01-a.nc"));
        Assert.False(File.Exists(Path.Combine(Place, "old.txt")));
        Assert.Equal([Place], Directory.GetFileSystemEntries(root));
    }

    [Fact]
    public void A_file_changed_by_hand_is_kept_and_named()
    {
        Write("G0");
        File.WriteAllText(Path.Combine(Place, "programs/01-a.nc"), "by hand");
        Assert.Contains("programs/01-a.nc", PacketFolder.Write(Place, Packet("G1"))!.Wrong, StringComparison.Ordinal);
        Assert.Equal("by hand", Read("programs/01-a.nc"));
    }

    [Fact]
    public void A_file_laid_into_it_is_kept_and_named()
    {
        Write("G0");
        File.WriteAllText(Path.Combine(Place, "notes.txt"), "mine");
        Assert.Contains("notes.txt", PacketFolder.Write(Place, Packet("G1"))!.Wrong, StringComparison.Ordinal);
        Assert.Equal("mine", Read("notes.txt"));
    }

    [Fact]
    public void A_folder_that_is_no_packet_is_left_alone()
    {
        Directory.CreateDirectory(Place);
        File.WriteAllText(Path.Combine(Place, "letter.txt"), "mine");
        Assert.NotNull(PacketFolder.Write(Place, Packet("G0")));
        Assert.Equal(["letter.txt"], Directory.GetFileSystemEntries(Place).Select(Path.GetFileName));
    }

    [Fact]
    public void A_failure_half_way_leaves_the_older_packet()
    {
        Write("G0");
        var broken = new Dictionary<string, byte[]>(Packet("G1")) { ["z"] = [1], ["z/under-a-file"] = [2] };   // a file cannot be a folder too
        Assert.NotNull(PacketFolder.Write(Place, broken));
        Assert.Equal("G0", Read("programs/01-a.nc"));
        Assert.Equal([Place], Directory.GetFileSystemEntries(root));
    }

    [Fact]
    public void A_place_that_cannot_be_is_refused_in_words()
    {
        File.WriteAllText(Path.Combine(root, "file"), "x");
        Assert.NotNull(PacketFolder.Write(Path.Combine(root, "file"), Packet("G0")));
        Assert.NotNull(PacketFolder.Write(Path.Combine(root, "file", "under"), Packet("G0")));
    }

    [Theory, InlineData("../escape"), InlineData("/abs"), InlineData("files.sha256")]
    public void Names_stay_inside(string name) =>
        Assert.Throws<ArgumentException>(() => PacketFolder.Write(Place, new Dictionary<string, byte[]>(Packet("G0")) { [name] = [1] }));
}
