using Practice.TestSupport;

[assembly: AssemblyFixture(typeof(PostgresServer))]
