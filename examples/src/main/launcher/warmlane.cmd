@echo off
rem Starts the warmlane.jar that lies beside this script, with options of the Java machine that suit a command which
rem runs for seconds: one compiler instead of two, and the collector without threads of its own.
setlocal
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if exist "%~dp0runtime\bin\java.exe" set "java=%~dp0runtime\bin\java.exe"
if "%java%"=="java" where java >nul 2>nul || (
  >&2 echo warmlane needs Java 17 or newer: install a JDK, or set JAVA_HOME to the folder of one
  exit /b 3
)
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%~dp0warmlane.jar" %*
exit /b %errorlevel%
