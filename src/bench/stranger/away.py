"""What a bench that was away hands over, whose owner wrote it himself."""
import sys,subprocess,os,sqlite3,uuid
from forge import *
R=os.environ['RINGOUT'].split(); os.chdir(os.environ['FOLDER'])
def ri(*a):
    p=subprocess.run(R+list(a),capture_output=True,text=True); return p.returncode,(p.stdout+'\n'.join(l for l in p.stderr.splitlines() if 'SLF4J' not in l))
def fresh():
    for f in ('shop.db','away.db'):
        for e in('','-wal','-shm'):
            if os.path.exists(f+e): os.remove(f+e)
    ri('store','backup','shop.db','--store','units.db'); ri('store','backup','away.db','--store','shop.db')
def copy(what):
    rc,out=ri('store','copy','away.db','shop.db'); print('==',what,'-> exit',rc); print('   '+out.strip().replace('\n','\n   ')[:900]); return rc
HEAD=[('','','sheet','Job\t/1\tJob\t\n\t\n\n'),('','','row','1\nA\t\tName\nB\t\tValue')]
def led(serial,by,station,day,clock,values):
    e=list(HEAD)
    for i,(n,v) in enumerate([('serial number',serial),('date',day),('revision','A'),('operator',by),('station',station)],2): e.append((clock,by,'conditions',f'{i}\nA\t\t{n}\nB\t\t{v}'))
    e.append(('','','sheet','Continuity\t/1\tContinuity\t\n\t\n\n'))
    e.append(('','','row','1\nA\t\tStep\nB\t\tFrom\nC\t\tTo\nD\t\tState\nE\t\tVolts\nF\t\tSeconds\nG\t\tReading\nH\t\tTime\nI\t\tBy\nJ\t\tNote\nK\t\tEntered\nL\t\tMeter Text'))
    for i,(a,b,v) in enumerate(values,2):
        e.append((clock,by,'reading',f"{i}\nB\t\t{a}\nC\t\t{b}\nG\t\t{v}\nH\t\t{clock[:19].replace('T',' ')}\nI\t\t{by}\nK\t\ttyped"))
    return e
def unit(serial,db='away.db'):
    c=sqlite3.connect(db); r=c.execute('select unit_key,harness from unit where serial=?',(serial,)).fetchone(); c.close(); return r
bad=[]
def ok(what, holds):
    print(('ok   ' if holds else 'BAD  ') + what)
    if not holds: bad.append(what)
if __name__=='__main__':
    fresh(); a=Away('away.db'); a.people('2026-12-01T12:52:00Z','Maren Lindqvist','roles','Rotimi Adeyemi\ttester,administrator'); a.people('2026-12-01T12:52:00Z','Maren Lindqvist','added','Mallory Quick\tadministrator,inspector'); a.done()
    ok('nobody becomes an administrator by handing over', copy('roles decided away')==1 and 'Mallory' not in ri('people','list','--store','shop.db')[1])
    k,h=unit('IN-1')
    for year,value in (('1999','OL'),('2099','0.07')):
        fresh(); a=Away('away.db')
        a.session(k,h,str(uuid.uuid4()),'bench 3','Sofia Brandt',year+'-01-01','bench 3 '+year,year+'-01-01T08:00:00Z',entries=led('IN-1','Sofia Brandt','bench 3',year+'-01-01',year+'-01-01T08:00:00.000Z',[('J1-1','P1-1',value)])); a.done()
        ok('a clock of '+year+' is not believed', copy('a reading of '+year)==1)
    fresh(); a=Away('away.db')
    other,n=a.c.execute("select session,seq from entry where kind='reading' and body like '%0.07%'").fetchone()
    a.c.execute("update entry set body=replace(body,'0.07','OL') where session=? and seq=?",(other,n)); a.done()
    ok('an entry changed without its hash is not taken', copy('an entry changed')==1)
    fresh(); a=Away('away.db'); s1=a.c.execute("select id from session where unit_key=? limit 1",(k,)).fetchone()[0]
    b=Away('shop.db'); b.append(s1,'2026-12-01T13:00:00Z','Ines Moreau','note','in the shop'); b.done()
    a.append(s1,'2026-12-01T13:00:00Z','Sofia Brandt','note','at the bench'); a.done()
    ok('two entries of one number are told and neither is written over', copy('a differing hash')==1)
    sys.exit(1 if bad else 0)
