using Practice.Store.Cluster;

namespace Practice.Store.Tests.Cluster;

public class ServerProgramsTests
{
    [Theory]
    [InlineData("postgres (PostgreSQL) 15.18 (Debian 15.18-0+deb12u1)", 15)]
    [InlineData("postgres (PostgreSQL) 18.4", 18)]
    [InlineData("postgres (PostgreSQL) 19beta1", 19)]
    [InlineData("", null)]
    public void The_major_version_is_read_from_what_the_server_says(string version, int? major) =>
        Assert.Equal(major, ServerPrograms.ReadMajor(version));
}
